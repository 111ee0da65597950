/** Rigs: what hung and stood in an enclosure, where and when, and what light it gives. */
package dapple.rig;
