/** A collection is taken in from sheets: what they would change is told first, then all of it is stored or nothing. */
package dapple.importing;
