package dapple.light.geometry;

/** The part of a segment that is hidden from a place, as shares of the way along the segment. */
public final class Shadow {
    private double low;
    private double high;
    private int lowEdge;
    private int highEdge;

    /** Where the hidden part begins, 0 to 1. */
    public double low() {
        return low;
    }

    /** Where it ends. */
    public double high() {
        return high;
    }

    /** Which edge of the solid begins it, 0 if it begins with the segment: the same edge moves smoothly with the segment. */
    public int lowEdge() {
        return lowEdge;
    }

    /** Which edge ends it, 0 if it ends with the segment. */
    public int highEdge() {
        return highEdge;
    }

    boolean set(double newLow, int newLowEdge, double newHigh, int newHighEdge) {
        low = newLow;
        lowEdge = newLowEdge;
        high = newHigh;
        highEdge = newHighEdge;
        return high > low;
    }
}
