package dapple;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What one size of a scene costs, when the machine was least disturbed.
 *
 * @param what there are so many of
 */
record Cost(String what, int count, double milliseconds) implements Comparable<Cost> {
    /** The exponent is fitted to the sizes from this share of the largest, where what does not grow matters least. */
    private static final double FITTED = 0.01;

    @Override
    public int compareTo(Cost other) {
        return Comparator.comparing(Cost::what).thenComparing(Cost::count).compare(this, other);
    }

    static String table(List<Cost> costs) {
        return costs.stream()
                .map(cost -> String.format(Locale.ROOT, "%s,%d,%.4g%n", cost.what, cost.count, cost.milliseconds))
                .collect(Collectors.joining("", "what,count,milliseconds\n", ""));
    }

    static List<Cost> of(List<Cost> costs, String what) {
        return costs.stream().filter(cost -> cost.what.equals(what)).toList();
    }

    /** The slope of the logarithms by least squares: 1 is linear, less is better. */
    static double exponent(List<Cost> costs, String what) {
        int most = of(costs, what).stream().mapToInt(Cost::count).max().orElse(0);
        List<Cost> large = of(costs, what).stream()
                .filter(cost -> cost.count >= FITTED * most)
                .toList();
        double meanX = large.stream().mapToDouble(Cost::logCount).average().orElse(0);
        double meanY = large.stream().mapToDouble(Cost::logCost).average().orElse(0);
        double products = large.stream()
                .mapToDouble(cost -> (cost.logCount() - meanX) * (cost.logCost() - meanY))
                .sum();
        double squares = large.stream()
                .mapToDouble(cost -> (cost.logCount() - meanX) * (cost.logCount() - meanX))
                .sum();
        return products / squares;
    }

    double logCount() {
        return Math.log10(count);
    }

    double logCost() {
        return Math.log10(milliseconds);
    }
}
