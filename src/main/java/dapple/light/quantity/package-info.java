/** The quantities of light with their units, and the intervals that amounts of them lie in. */
package dapple.light.quantity;
