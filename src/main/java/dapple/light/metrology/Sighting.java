package dapple.light.metrology;

/**
 * A reading with its place in the reckoning.
 *
 * @param meter number of the meter, from 0
 * @param column of the meter's gain in the reading's week
 */
record Sighting(Compared reading, int meter, int column) {}
