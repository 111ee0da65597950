package dapple.light.field;

/** The part of a segment in which some linear functions are above 0, as shares of the way along it. */
final class Part {
    private double low;
    private double high;
    private int lowEdge;
    private int highEdge;

    /** Begins with the whole segment. */
    void begin() {
        low = 0;
        high = 1;
        lowEdge = 0;
        highEdge = 0;
    }

    /**
     * Keeps where a function is above 0.
     *
     * @param edge names the function, from 1
     * @return whether anything is left
     */
    boolean keep(int edge, double atA, double atB) {
        if (atA <= 0 && atB <= 0) {
            return false;
        }
        double zero = atA / (atA - atB);
        if (atA < 0 && zero > low) {
            low = zero;
            lowEdge = edge;
        } else if (atB < 0 && zero < high) {
            high = zero;
            highEdge = edge;
        }
        return high > low;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    /** Which function begins it, 0 if it begins with the segment. */
    int lowEdge() {
        return lowEdge;
    }

    int highEdge() {
        return highEdge;
    }
}
