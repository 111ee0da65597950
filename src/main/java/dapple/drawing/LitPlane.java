package dapple.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What falls on a plane, at places a step apart, rows upward. Where it is not known, as inside solids, it is drawn as the
 * mean of its neighbours, outward from what is known; solids are drawn over it.
 */
public final class LitPlane {
    private final Grid grid;
    private final double[][] amounts;

    private LitPlane(Grid grid, double[][] amounts) {
        this.grid = grid;
        this.amounts = amounts;
    }

    /**
     * Where the places lie.
     *
     * @param from the lowest at the left
     * @param cell their steps, each above 0
     * @param columns at least 2
     * @param rows at least 2
     */
    public record Grid(Place from, Place cell, int columns, int rows) {
        public Grid {
            if (!(cell.acrossMetres() > 0 && cell.upMetres() > 0) || columns < 2 || rows < 2) {
                throw new IllegalArgumentException(
                        "a plane must have steps and cells, was " + cell + ", " + columns + " by " + rows);
            }
        }

        /**
         * Over a rectangle from edge to edge.
         *
         * @param mostMetres the largest step
         */
        public static Grid over(Place from, Place to, double mostMetres) {
            double across = to.acrossMetres() - from.acrossMetres();
            double up = to.upMetres() - from.upMetres();
            int columns = Math.max(1, (int) Math.ceil(across / mostMetres - 1e-9));
            int rows = Math.max(1, (int) Math.ceil(up / mostMetres - 1e-9));
            return new Grid(from, new Place(across / columns, up / rows), columns + 1, rows + 1);
        }

        public Place place(double column, double row) {
            return from.plus(column * cell.acrossMetres(), row * cell.upMetres());
        }
    }

    /** Gives the amount at a place; NaN where it is not known. */
    public interface Amount {
        double at(Place place);
    }

    public static LitPlane of(Grid grid, Amount amount) {
        double[][] amounts = new double[grid.rows()][grid.columns()];
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                amounts[row][column] = amount.at(grid.place(column, row));
            }
        }
        fill(amounts);
        return new LitPlane(grid, amounts);
    }

    private static void fill(double[][] amounts) {
        List<Filled> filled = ring(amounts);
        while (!filled.isEmpty()) {
            filled.forEach(found -> amounts[found.row()][found.column()] = found.amount());
            filled = ring(amounts);
        }
    }

    private record Filled(int row, int column, double amount) {}

    /** What is unknown beside what is known. */
    private static List<Filled> ring(double[][] amounts) {
        List<Filled> found = new ArrayList<>();
        for (int row = 0; row < amounts.length; row++) {
            for (int column = 0; column < amounts[row].length; column++) {
                double mean = Double.isNaN(amounts[row][column]) ? mean(amounts, row, column) : Double.NaN;
                if (!Double.isNaN(mean)) {
                    found.add(new Filled(row, column, mean));
                }
            }
        }
        return found;
    }

    private static double mean(double[][] amounts, int row, int column) {
        double sum = 0;
        int count = 0;
        for (int r = Math.max(0, row - 1); r <= Math.min(amounts.length - 1, row + 1); r++) {
            for (int c = Math.max(0, column - 1); c <= Math.min(amounts[r].length - 1, column + 1); c++) {
                if (!Double.isNaN(amounts[r][c])) {
                    sum += amounts[r][c];
                    count++;
                }
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /**
     * This over another, place by place: 1 where both are dark, below the least amount that counts.
     *
     * @param base on the same grid
     * @param least that counts, above 0, in the unit of both
     */
    public LitPlane over(LitPlane base, double least) {
        if (!grid.equals(base.grid)) {
            throw new IllegalArgumentException("planes must have one grid, had " + grid + " and " + base.grid);
        }
        double[][] ratios = new double[grid.rows()][grid.columns()];
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                ratios[row][column] =
                        Math.max(least, amounts[row][column]) / Math.max(least, base.amounts[row][column]);
            }
        }
        return new LitPlane(grid, ratios);
    }

    Grid grid() {
        return grid;
    }

    Contours contours() {
        return new Contours(amounts);
    }

    /** The largest amount that a share of the places reaches; 0 where nothing is known. */
    double reachedBy(double share) {
        double[] sorted =
                Arrays.stream(amounts).flatMapToDouble(Arrays::stream).sorted().toArray();
        double amount = sorted[(int) Math.floor((sorted.length - 1) * (1 - share))];
        return Double.isFinite(amount) ? amount : 0;
    }

    /** Whether any amount is known. */
    boolean isKnown() {
        return !Double.isNaN(amounts[0][0]);
    }
}
