/** Lamps as the engine sees them: where they emit from, in which directions, and how much of each quantity. */
package dapple.light.source;
