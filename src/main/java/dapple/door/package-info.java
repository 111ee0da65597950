/** Codes on the doors of enclosures, and the labels that carry them. */
package dapple.door;
