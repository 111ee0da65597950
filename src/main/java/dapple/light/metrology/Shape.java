package dapple.light.metrology;

/**
 * How gains may have changed: by a step in one week, or evenly ever since the first.
 *
 * @param meter whose, or {@link #ALL}
 * @param week in which a step came; of an even drift 0
 */
record Shape(Kind kind, int meter, int week) {
    /** In place of a meter's number: all of them. */
    static final int ALL = -1;

    private static final double WEEKS_PER_YEAR = 365.25 / 7;

    enum Kind {
        STEP,
        DRIFT
    }

    static Shape step(int meter, int week) {
        return new Shape(Kind.STEP, meter, week);
    }

    static Shape drift(int meter) {
        return new Shape(Kind.DRIFT, meter, 0);
    }

    /** A gain that is the same in all weeks. */
    static Shape constant(int meter) {
        return step(meter, 0);
    }

    /** ln gain in every column for a change of 1, or of 1 a year. */
    double[] gains(GainInformation information) {
        double[] gains = new double[information.width()];
        for (int column = 0; column < information.meters(); column++) {
            if (meter == ALL || meter == column) {
                fill(gains, information, column);
            }
        }
        return gains;
    }

    private void fill(double[] gains, GainInformation information, int column) {
        for (int at = week; at < information.weeks(); at++) {
            gains[information.column(column, at)] = kind == Kind.STEP ? 1 : at / WEEKS_PER_YEAR;
        }
    }

    /** How large the change has become by a week. */
    double grown(double estimate, int by) {
        return kind == Kind.STEP ? estimate : estimate * by / WEEKS_PER_YEAR;
    }
}
