package dapple.light.metrology;

import java.util.Arrays;

/** A few columns with an amount each, in the order in which they came first. */
final class Row {
    private int[] columns = new int[8];
    private double[] amounts = new double[8];
    private int size;

    int size() {
        return size;
    }

    int column(int place) {
        return columns[place];
    }

    double amount(int place) {
        return amounts[place];
    }

    /** The amount in a column, 0 where there is none. */
    double at(int column) {
        for (int place = size - 1; place >= 0; place--) {
            if (columns[place] == column) {
                return amounts[place];
            }
        }
        return 0;
    }

    void addTo(double[] sum, double factor) {
        for (int place = 0; place < size; place++) {
            sum[columns[place]] += factor * amounts[place];
        }
    }

    /** The place of a column, made at the end where there was none. */
    int placeOf(int column) {
        for (int place = size - 1; place >= 0; place--) {
            if (columns[place] == column) {
                return place;
            }
        }
        append(column, 0);
        return size - 1;
    }

    void append(int column, double amount) {
        if (size == columns.length) {
            columns = Arrays.copyOf(columns, 2 * size);
            amounts = Arrays.copyOf(amounts, 2 * size);
        }
        columns[size] = column;
        amounts[size] = amount;
        size++;
    }

    double times(double[] gains) {
        double sum = 0;
        for (int place = 0; place < size; place++) {
            sum += amounts[place] * gains[columns[place]];
        }
        return sum;
    }
}
