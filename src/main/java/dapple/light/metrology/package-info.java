/** What a reading is worth: uncertainty budgets of meters and readings, and meters that drift or were knocked. */
package dapple.light.metrology;
