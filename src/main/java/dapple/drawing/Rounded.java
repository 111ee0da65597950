package dapple.drawing;

/** Coordinates are written with one decimal. */
final class Rounded {
    private Rounded() {}

    static double of(double coordinate) {
        return Math.rint(coordinate * 10) / 10;
    }
}
