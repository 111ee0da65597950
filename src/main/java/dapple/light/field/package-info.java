/** The field: what light falls on any place, from every lamp, through every filter, past every solid. */
package dapple.light.field;
