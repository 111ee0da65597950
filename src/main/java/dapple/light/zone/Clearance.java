package dapple.light.zone;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * How large a disc around each place of a flat region surely lies in it: the Euclidean distance to the nearest place on
 * its border, exact [felzenszwalb2012]. A place is on the border unless it and its eight neighbours belong to the region,
 * so the disc enters no cell of the lattice that has a corner outside. Its radius is too small by at most the diagonal of
 * a cell, and by half of one more because its middle is a place of the lattice.
 */
final class Clearance {
    /** Stands for infinity, which the differences below do not bear. */
    private static final double FAR = 1e200;

    private final Sheet sheet;
    private final double[] squares;
    private final double[] heights;
    private final double[] found;
    private final int[] roots;
    private final double[] ends;

    private Clearance(Sheet sheet) {
        this.sheet = sheet;
        int longest = Math.max(sheet.countU(), sheet.countV());
        this.squares = new double[sheet.size()];
        this.heights = new double[longest];
        this.found = new double[longest];
        this.roots = new int[longest];
        this.ends = new double[longest + 1];
    }

    /**
     * The clearance at every place, m.
     *
     * @param inside whether the place at an index belongs to the region
     * @param beside whether something stands beside it, so that it is on the border in any case
     */
    static double[] of(Sheet sheet, IntPredicate inside, IntPredicate beside) {
        Clearance clearance = new Clearance(sheet);
        for (int index = 0; index < sheet.size(); index++) {
            boolean free = isSurrounded(sheet, inside, index) && !beside.test(index);
            clearance.squares[index] = free ? FAR : 0;
        }
        clearance.transform();
        Arrays.setAll(clearance.squares, index -> Math.sqrt(clearance.squares[index]));
        return clearance.squares;
    }

    private static boolean isSurrounded(Sheet sheet, IntPredicate inside, int index) {
        int u = sheet.u(index);
        int v = sheet.v(index);
        if (!inside.test(index) || u == 0 || v == 0 || u == sheet.countU() - 1 || v == sheet.countV() - 1) {
            return false;
        }
        int row = sheet.countU();
        return inside.test(index - 1)
                && inside.test(index + 1)
                && inside.test(index - row - 1)
                && inside.test(index - row)
                && inside.test(index - row + 1)
                && inside.test(index + row - 1)
                && inside.test(index + row)
                && inside.test(index + row + 1);
    }

    private void transform() {
        for (int v = 0; v < sheet.countV(); v++) {
            line(v * sheet.countU(), 1, sheet.countU(), sheet.stepU());
        }
        for (int u = 0; u < sheet.countU(); u++) {
            line(u, sheet.countU(), sheet.countV(), sheet.stepV());
        }
    }

    /**
     * One line: the lower envelope of the parabolas (x − q)² + f(q), as in the source, with places a step apart. Steps 1
     * to 3 build it, step 4 reads it off.
     */
    private void line(int begin, int stride, int count, double step) {
        for (int at = 0; at < count; at++) {
            heights[at] = squares[begin + at * stride] / (step * step);
        }
        int last = 0;
        roots[0] = 0;
        ends[0] = Double.NEGATIVE_INFINITY;
        ends[1] = Double.POSITIVE_INFINITY;
        for (int at = 1; at < count; at++) {
            double meets = meeting(at, roots[last]);
            while (meets <= ends[last]) {
                last--;
                meets = meeting(at, roots[last]);
            }
            last++;
            roots[last] = at;
            ends[last] = meets;
            ends[last + 1] = Double.POSITIVE_INFINITY;
        }
        last = 0;
        for (int at = 0; at < count; at++) {
            while (ends[last + 1] < at) {
                last++;
            }
            double away = at - roots[last];
            found[at] = away * away + heights[roots[last]];
        }
        for (int at = 0; at < count; at++) {
            squares[begin + at * stride] = found[at] * (step * step);
        }
    }

    /** Where the parabolas rooted at two places meet. */
    private double meeting(int one, int other) {
        double rise = heights[one] - heights[other] + (double) one * one - (double) other * other;
        return rise / (2.0 * (one - other));
    }
}
