package dapple.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Puts things from left to right into as few rows as keep them apart. */
final class Rows {
    static final double APART = 10;

    private final int most;
    private final List<Double> ends = new ArrayList<>();

    Rows(int most) {
        this.most = most;
    }

    /** The row that is free from there; none where all are taken. */
    OptionalInt place(double from, double to) {
        for (int row = 0; row < ends.size(); row++) {
            if (ends.get(row) + APART <= from) {
                ends.set(row, to);
                return OptionalInt.of(row);
            }
        }
        if (ends.size() == most) {
            return OptionalInt.empty();
        }
        ends.add(to);
        return OptionalInt.of(ends.size() - 1);
    }

    int used() {
        return ends.size();
    }
}
