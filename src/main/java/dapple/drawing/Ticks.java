package dapple.drawing;

/** The numbers along an axis. */
final class Ticks {
    private Ticks() {}

    /** A step of 1, 2 or 5 times a power of ten that leaves room for every number, but at most the whole length. */
    static double step(double lengthMetres, double roomMetres) {
        for (double power = 0.01; power < 1000; power *= 10) {
            for (int part : new int[] {1, 2, 5}) {
                if (part * power >= roomMetres) {
                    return Math.min(part * power, lengthMetres);
                }
            }
        }
        return lengthMetres;
    }
}
