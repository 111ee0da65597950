/** How sure amounts are: what readings, meters, places and fits contribute, and the 95 % interval that follows. */
package dapple.light.uncertainty;
