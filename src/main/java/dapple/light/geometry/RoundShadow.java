package dapple.light.geometry;

import java.util.Arrays;

/**
 * The shadow of a round convex solid on a segment. It ends where the way from the place just touches the solid, and the
 * shares along the segment at which it does are roots of quadratics; between two of them all is hidden or nothing is,
 * so that the middle tells.
 */
final class RoundShadow {
    private static final int MOST = 16;

    private final double[] ends = new double[MOST];
    private int count;

    /** Whether the way to the point at a share of the segment passes through the solid. */
    interface Hidden {
        boolean at(double share);
    }

    /** Begins with the ends of the segment. */
    void begin() {
        ends[0] = 0;
        ends[1] = 1;
        count = 2;
    }

    /** Adds the roots of a u² + b u + c that lie on the segment. */
    void touches(double a, double b, double c) {
        double discriminant = b * b - 4 * a * c;
        if (discriminant >= 0) {
            double larger = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
            touch(larger / a);
            touch(c / larger);
        }
    }

    private void touch(double share) {
        if (share > 0 && share < 1) {
            ends[count++] = share;
        }
    }

    /**
     * Looks between the ends.
     *
     * @param shadow receives the hidden part
     * @return whether there is any
     */
    boolean find(Hidden hidden, Shadow shadow) {
        Arrays.sort(ends, 0, count);
        double low = 1;
        double high = 0;
        for (int end = 1; end < count; end++) {
            if (ends[end] > ends[end - 1] && hidden.at((ends[end] + ends[end - 1]) / 2)) {
                low = Math.min(low, ends[end - 1]);
                high = ends[end];
            }
        }
        return shadow.set(low, low > 0 ? 1 : 0, high, high < 1 ? 1 : 0);
    }
}
