package dapple.light.geometry;

/**
 * The part of a segment that is hidden from a place, and the room to find it in. Found from the triangle between the place and the segment, cut by half-spaces. A point of it is s·(p + u·(q − p)), where p and q lead
 * from the place to the ends of the segment, s is the share of the way and u the share along the segment. In the
 * coordinates s and t = s·u every half-space is a half-plane, so that what is left is a convex polygon.
 */
public final class Shadow {
    private static final int MOST = 16;

    private double[] shares = new double[MOST];
    private double[] alongs = new double[MOST];
    private double[] keptShares = new double[MOST];
    private double[] keptAlongs = new double[MOST];
    private int corners;
    private double low;
    private double high;

    /** Where the hidden part begins, as a share of the segment, 0 to 1. */
    public double low() {
        return low;
    }

    /** Where it ends. */
    public double high() {
        return high;
    }

    boolean set(double newLow, double newHigh) {
        low = newLow;
        high = newHigh;
        return high > low;
    }

    /** Begins with the whole triangle. */
    void begin() {
        corners = 3;
        shares[0] = 0;
        alongs[0] = 0;
        shares[1] = 1;
        alongs[1] = 0;
        shares[2] = 1;
        alongs[2] = 1;
    }

    /**
     * Cuts off what lies beyond: keeps s·p + t·(q − p) at most limit, where p and q are the components of the ways to
     * the ends along the normal of the half-space.
     *
     * @return whether anything is left
     */
    boolean keep(double limit, double p, double q) {
        if (limit > 0 && p < limit && q < limit) {
            return true;
        }
        int kept = 0;
        double slope = q - p;
        double last = limit - shares[corners - 1] * p - alongs[corners - 1] * slope;
        for (int corner = 0; corner < corners; corner++) {
            double room = limit - shares[corner] * p - alongs[corner] * slope;
            int before = corner == 0 ? corners - 1 : corner - 1;
            if (room > 0 != last > 0) {
                double share = last / (last - room);
                keptShares[kept] = shares[before] + share * (shares[corner] - shares[before]);
                keptAlongs[kept++] = alongs[before] + share * (alongs[corner] - alongs[before]);
            }
            if (room > 0) {
                keptShares[kept] = shares[corner];
                keptAlongs[kept++] = alongs[corner];
            }
            last = room;
        }
        swap(kept);
        return kept >= 3;
    }

    private void swap(int kept) {
        double[] oldShares = shares;
        shares = keptShares;
        keptShares = oldShares;
        double[] oldAlongs = alongs;
        alongs = keptAlongs;
        keptAlongs = oldAlongs;
        corners = kept;
    }

    /** Takes the range of u in what is left. */
    boolean measure() {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int corner = 0; corner < corners; corner++) {
            if (shares[corner] > 0) {
                double along = alongs[corner] / shares[corner];
                least = Math.min(least, along);
                greatest = Math.max(greatest, along);
            }
        }
        return set(Math.max(0, least), Math.min(1, greatest));
    }
}
