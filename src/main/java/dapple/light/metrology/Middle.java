package dapple.light.metrology;

import java.util.List;

/** The median. */
final class Middle {
    private Middle() {}

    /** @param numbers at least 1 */
    static double of(List<Double> numbers) {
        List<Double> sorted = numbers.stream().sorted().toList();
        int size = sorted.size();
        return (sorted.get((size - 1) / 2) + sorted.get(size / 2)) / 2;
    }
}
