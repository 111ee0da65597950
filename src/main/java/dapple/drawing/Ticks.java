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

    /** The largest of 1, 2 and 5 times a power of ten that is at most an amount above 0. */
    static double roundBelow(double amount) {
        int power = (int) Math.floor(Math.log10(amount) + 1e-9);
        double part = amount / Math.pow(10, power);
        int whole = part >= 5 - 1e-9 ? 5 : part >= 2 - 1e-9 ? 2 : 1;
        return power < 0 ? whole / Math.pow(10, -power) : whole * Math.pow(10, power);
    }
}
