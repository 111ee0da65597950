package dapple.light.metrology;

/**
 * A reading less what was expected of it: v = row · gains + what chance adds.
 *
 * @param difference v, ln, with all gains 0
 * @param variance of what was expected, ln², without the reading's own
 */
record Innovation(Row row, double difference, double variance) {
    double withGains(double[] gains) {
        return difference - row.times(gains);
    }
}
