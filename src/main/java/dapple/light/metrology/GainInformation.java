package dapple.light.metrology;

import java.util.List;

/**
 * What all readings so far say of the gains: normal equations of ln gain, column by column. Column 0 is the share by
 * which the stated declines are wrong; then each meter's gain in each week.
 */
final class GainInformation {
    private final int meters;
    private final int weeks;
    private final double[][] matrix;
    private final double[] right;

    GainInformation(int meters, int weeks) {
        this.meters = meters;
        this.weeks = weeks;
        int width = 1 + weeks * meters;
        matrix = new double[width][width];
        right = new double[width];
    }

    int meters() {
        return meters;
    }

    int weeks() {
        return weeks;
    }

    static int columnOfDeclines() {
        return 0;
    }

    int column(int meter, int week) {
        return 1 + week * meters + meter;
    }

    int width() {
        return right.length;
    }

    /**
     * Adds what one meter read in one week. All of it shares one more unknown, as large as the scatter of days allows, which
     * is taken out at once: with c = information times the week's column, c cᵀ/(1/day² + c's entry in that column) less.
     *
     * @param column the meter's gain in that week
     * @param dayVariance ln², above 0
     */
    void add(List<Scored> readings, int column, double dayVariance) {
        double[] common = new double[width()];
        double score = 0;
        for (Scored scored : readings) {
            add(scored.row(), scored.innovation(), scored.variance());
            double entry = scored.row().at(column) / scored.variance();
            scored.row().addTo(common, entry);
            score += entry * scored.innovation();
        }
        takeOut(common, score, 1 / dayVariance + common[column]);
    }

    private void takeOut(double[] common, double score, double weight) {
        for (int i = 0; i < common.length; i++) {
            if (common[i] != 0) {
                double factor = common[i] / weight;
                right[i] -= factor * score;
                double[] into = matrix[i];
                for (int j = 0; j < common.length; j++) {
                    into[j] -= factor * common[j];
                }
            }
        }
    }

    /**
     * An innovation and all of its variance.
     *
     * @param innovation ln
     * @param variance ln², above 0
     */
    record Scored(Row row, double innovation, double variance) {}

    /** Adds an innovation v = row · gains + noise of a variance. */
    private void add(Row row, double innovation, double variance) {
        for (int i = 0; i < row.size(); i++) {
            double weighted = row.amount(i) / variance;
            right[row.column(i)] += weighted * innovation;
            double[] into = matrix[row.column(i)];
            for (int j = 0; j < row.size(); j++) {
                into[row.column(j)] += weighted * row.amount(j);
            }
        }
    }

    /** The matrix times a shape of gains. */
    double[] times(double[] shape) {
        double[] product = new double[width()];
        for (int column = 0; column < shape.length; column++) {
            addColumn(product, column, shape[column]);
        }
        return product;
    }

    /** Adds a multiple of one column, which is read along its row: the matrix is symmetric. */
    void addColumn(double[] sum, int column, double factor) {
        if (factor != 0) {
            double[] row = matrix[column];
            for (int i = 0; i < sum.length; i++) {
                sum[i] += factor * row[i];
            }
        }
    }

    double rightTimes(double[] shape) {
        return dot(right, shape);
    }

    static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < other.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
