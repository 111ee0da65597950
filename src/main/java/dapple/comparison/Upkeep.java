package dapple.comparison;

import java.util.List;

/**
 * What is to be read again so that meters and people can be relied on.
 *
 * @param comparisons of which two or more meters are at hand
 * @param repeats how many readings of others wait for who asks
 */
public record Upkeep(List<ComparisonDue> comparisons, long repeats) {
    public static final Upkeep NONE = new Upkeep(List.of(), 0);

    public Upkeep {
        comparisons = List.copyOf(comparisons);
    }

    public boolean isEmpty() {
        return comparisons.isEmpty() && repeats == 0;
    }
}
