package dapple.light.geometry;

import java.util.Arrays;

/** A convex region: what lies in all of some half-spaces n · P > limit. */
final class HalfSpaces {
    private static final int TERMS = 4;

    private double[] terms = new double[12 * TERMS];
    private int end;

    void clear() {
        end = 0;
    }

    void add(double x, double y, double z, double limit) {
        if (end == terms.length) {
            terms = Arrays.copyOf(terms, 2 * end);
        }
        terms[end] = x;
        terms[end + 1] = y;
        terms[end + 2] = z;
        terms[end + 3] = limit;
        end += TERMS;
    }

    /** Whether a place lies in all of them. */
    boolean hold(double x, double y, double z) {
        for (int at = 0; at < end; at += TERMS) {
            if (!(terms[at] * x + terms[at + 1] * y + terms[at + 2] * z > terms[at + 3])) {
                return false;
            }
        }
        return true;
    }

    /** Whether one of them has no corner of a hull, so that nothing of the hull lies in the region. */
    boolean exclude(Hull hull) {
        for (int at = 0; at < end; at += TERMS) {
            if (!reaches(hull, at)) {
                return true;
            }
        }
        return false;
    }

    private boolean reaches(Hull hull, int at) {
        for (int corner = 0; corner < hull.corners().size(); corner++) {
            Vec place = hull.corners().get(corner);
            if (terms[at] * place.x() + terms[at + 1] * place.y() + terms[at + 2] * place.z() > terms[at + 3]) {
                return true;
            }
        }
        return false;
    }

    /**
     * The part of a segment that lies in all of them.
     *
     * @param part receives it, as shares of the way from a to b
     * @return whether there is any
     */
    boolean part(Vec a, Vec b, Shadow part) {
        double low = 0;
        double high = 1;
        int lowEdge = 0;
        int highEdge = 0;
        for (int at = 0; at < end; at += TERMS) {
            double atA = terms[at] * a.x() + terms[at + 1] * a.y() + terms[at + 2] * a.z() - terms[at + 3];
            double atB = terms[at] * b.x() + terms[at + 1] * b.y() + terms[at + 2] * b.z() - terms[at + 3];
            if (atA <= 0 && atB <= 0) {
                return false;
            }
            double zero = atA / (atA - atB);
            if (atA < 0 && zero > low) {
                low = zero;
                lowEdge = at / TERMS + 1;
            } else if (atB < 0 && zero < high) {
                high = zero;
                highEdge = at / TERMS + 1;
            }
        }
        return part.set(low, lowEdge, high, highEdge);
    }
}
