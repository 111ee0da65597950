package dapple.light.field;

import dapple.light.geometry.Shadow;

/** Where a chord is cut, in ascending order, by which edges, and which parts are hidden. */
final class Cuts {
    private final double[] ends;
    private final int[] edges;
    private final double[] hiddenLow;
    private final double[] hiddenHigh;
    private int count;
    private int hidden;

    Cuts(int solids, int screens, int others) {
        ends = new double[2 + 2 * (solids + screens + others)];
        edges = new int[ends.length];
        hiddenLow = new double[solids];
        hiddenHigh = new double[solids];
    }

    /** Begins with two ends, as shares of the chord, and the edges that they stand for. */
    void begin(double low, int lowEdge, double high, int highEdge) {
        ends[0] = low;
        edges[0] = lowEdge;
        ends[1] = high;
        edges[1] = highEdge;
        count = 2;
        hidden = 0;
    }

    double low() {
        return ends[0];
    }

    double high() {
        return ends[count - 1];
    }

    /** Cuts, if it is between the ends. */
    void add(double at, int edge) {
        if (!(at > low() && at < high())) {
            return;
        }
        int place = count++;
        while (ends[place - 1] > at) {
            ends[place] = ends[place - 1];
            edges[place] = edges[place - 1];
            place--;
        }
        ends[place] = at;
        edges[place] = edge;
    }

    /** Hides a part; the edges of a solid are counted from a first one. */
    void hide(Shadow shadow, int firstEdge) {
        hiddenLow[hidden] = shadow.low();
        hiddenHigh[hidden++] = shadow.high();
        add(shadow.low(), firstEdge + shadow.lowEdge());
        add(shadow.high(), firstEdge + shadow.highEdge());
    }

    int count() {
        return count;
    }

    double at(int index) {
        return ends[index];
    }

    int edge(int index) {
        return edges[index];
    }

    boolean isHidden(double at) {
        for (int index = 0; index < hidden; index++) {
            if (at > hiddenLow[index] && at < hiddenHigh[index]) {
                return true;
            }
        }
        return false;
    }
}
