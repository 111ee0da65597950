package dapple.agreement;

/** Changes in percent, of natural logarithms. */
final class Percent {
    private static final double PERCENT = 100;

    private Percent() {}

    static double of(double ln) {
        return PERCENT * Math.expm1(ln);
    }
}
