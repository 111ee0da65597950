package dapple.light.field;

/** The angle of a direction in a half-plane, several times as fast as the platform's and as good to the last bits. */
final class Arctangent {
    /** The table's steps in the tangent. */
    private static final int STEPS = 64;

    private static final double[] TABLE = new double[STEPS + 1];

    static {
        for (int step = 0; step <= STEPS; step++) {
            TABLE[step] = Math.atan((double) step / STEPS);
        }
    }

    private Arctangent() {}

    /**
     * The angle from the x axis to (x, y), 0 to π.
     *
     * @param y at least 0; x and y not both 0
     */
    static double angle(double y, double x) {
        double width = Math.abs(x);
        double acute = y <= width ? ofShare(y / width) : Math.PI / 2 - ofShare(width / y);
        return x < 0 ? Math.PI - acute : acute;
    }

    /** From the nearest entry e of the table: atan t = atan e + atan((t − e)/(1 + t e)), the latter below 1/128. */
    private static double ofShare(double tangent) {
        int step = (int) (tangent * STEPS + 0.5);
        double entry = (double) step / STEPS;
        double rest = (tangent - entry) / (1 + tangent * entry);
        double square = rest * rest;
        return TABLE[step] + rest * (1 - square * (1.0 / 3 - square * (1.0 / 5 - square / 7)));
    }
}
