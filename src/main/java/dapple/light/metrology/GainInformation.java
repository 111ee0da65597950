package dapple.light.metrology;

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

    /** Adds an innovation v = row · gains + noise of a variance. */
    void add(Row row, double innovation, double variance) {
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
