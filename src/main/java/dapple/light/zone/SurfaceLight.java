package dapple.light.zone;

import dapple.light.quantity.Interval;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * The light on a resting surface. It is measured at every fourth place along both sides; then twice the cells are halved
 * in which any target may begin or end: those of which some corners are not open, or whose corners' amounts, with as much
 * again on either side, hold a limit. Inside other cells the amounts are taken as linear. So borders are found to a step,
 * and what is narrower than four steps may be overlooked.
 */
public final class SurfaceLight {
    static final int COARSEST = 4;

    private final SurfaceLattice lattice;
    private final Sheet sheet;
    private final List<Interval> targets;
    private final double[][] amounts;
    private final BitSet settled = new BitSet();
    private int measured;

    private SurfaceLight(SurfaceLattice lattice, List<Interval> targets) {
        this.lattice = lattice;
        this.sheet = lattice.sheet();
        this.targets = List.copyOf(targets);
        this.amounts = new double[targets.size()][lattice.size()];
    }

    /**
     * Measures a surface.
     *
     * @param targets for basking, one for each quantity that is measured; the first is that of the patch
     */
    public static SurfaceLight of(SurfaceLattice lattice, List<Interval> targets, Measuring measuring) {
        SurfaceLight light = new SurfaceLight(lattice, targets);
        light.measure(light.coarse(), measuring);
        for (int stride = COARSEST; stride > 1; stride /= 2) {
            light.measure(light.wanted(stride), measuring);
            light.fill(stride);
        }
        return light;
    }

    private BitSet coarse() {
        BitSet wanted = new BitSet();
        for (int v = 0; v < sheet.countV(); v += COARSEST) {
            for (int u = 0; u < sheet.countU(); u += COARSEST) {
                wanted.set(index(u, v));
            }
        }
        return wanted;
    }

    private int index(int u, int v) {
        return u + v * sheet.countU();
    }

    private void measure(BitSet wanted, Measuring measuring) {
        int[] places = wanted.stream().filter(lattice::isOn).toArray();
        for (double[] row : amounts) {
            wanted.stream().forEach(index -> row[index] = Double.NaN);
        }
        double[][] found = measuring.at(lattice, places);
        for (int row = 0; row < amounts.length; row++) {
            for (int at = 0; at < places.length; at++) {
                amounts[row][places[at]] = found[row][at];
            }
        }
        settled.or(wanted);
        measured += places.length;
    }

    private BitSet wanted(int stride) {
        BitSet wanted = new BitSet();
        for (int v = 0; v + stride < sheet.countV(); v += stride) {
            for (int u = 0; u + stride < sheet.countU(); u += stride) {
                if (mayHoldABorder(u, v, stride)) {
                    wantMiddles(u, v, stride, wanted);
                }
            }
        }
        wanted.andNot(settled);
        return wanted;
    }

    private void wantMiddles(int u, int v, int stride, BitSet wanted) {
        int half = stride / 2;
        wanted.set(index(u + half, v));
        wanted.set(index(u, v + half));
        wanted.set(index(u + half, v + half));
        wanted.set(index(u + stride, v + half));
        wanted.set(index(u + half, v + stride));
    }

    private boolean mayHoldABorder(int u, int v, int stride) {
        for (int row = 0; row < amounts.length; row++) {
            double a = amounts[row][index(u, v)];
            double b = amounts[row][index(u + stride, v)];
            double c = amounts[row][index(u, v + stride)];
            double d = amounts[row][index(u + stride, v + stride)];
            if (Double.isNaN(a + b + c + d)) {
                return !(Double.isNaN(a) && Double.isNaN(b) && Double.isNaN(c) && Double.isNaN(d));
            }
            double low = Math.min(Math.min(a, b), Math.min(c, d));
            double high = Math.max(Math.max(a, b), Math.max(c, d));
            if (isNear(targets.get(row).low(), low, high)
                    || isNear(targets.get(row).high(), low, high)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNear(double limit, double low, double high) {
        double more = high - low;
        return limit > low - more && limit < high + more;
    }

    /** Takes what was not measured between the corners of a cell as linear; NaN stays NaN. */
    private void fill(int stride) {
        int half = stride / 2;
        for (int v = 0; v < sheet.countV(); v += half) {
            for (int u = 0; u < sheet.countU(); u += half) {
                if (!settled.get(index(u, v))) {
                    fill(u, v, u % stride == 0 ? 0 : half, v % stride == 0 ? 0 : half);
                }
            }
        }
    }

    private void fill(int u, int v, int besideU, int besideV) {
        for (double[] row : amounts) {
            row[index(u, v)] = (row[index(u - besideU, v - besideV)]
                            + row[index(u + besideU, v - besideV)]
                            + row[index(u - besideU, v + besideV)]
                            + row[index(u + besideU, v + besideV)])
                    / 4;
        }
        settled.set(index(u, v));
    }

    public SurfaceLattice lattice() {
        return lattice;
    }

    /** How many places were measured. */
    public int measured() {
        return measured;
    }

    /** The amount of the first quantity at an index; NaN where the place is not open. */
    double amount(int index) {
        return amounts[0][index];
    }

    boolean isBasking(int index) {
        return targets.get(0).contains(amounts[0][index]);
    }

    boolean isInEveryTarget(int index) {
        for (int row = 0; row < amounts.length; row++) {
            if (!targets.get(row).contains(amounts[row][index])) {
                return false;
            }
        }
        return true;
    }

    /** The open place that has most of the first quantity, the first of several; none if no place is open. */
    public Optional<Brightest> brightest() {
        int best = -1;
        double most = -1;
        for (int index = 0; index < amounts[0].length; index++) {
            if (amounts[0][index] > most) {
                most = amounts[0][index];
                best = index;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(new Brightest(lattice, best, most));
    }

    /** A place of a surface and what falls there. */
    public record Brightest(SurfaceLattice lattice, int index, double amount) {}
}
