package dapple.meter;

import java.util.List;

/**
 * What displayed amounts are multiplied by: one factor for all, or one for each range of the display.
 *
 * @param from where the first range begins, as displayed; without limit where one factor holds for all
 * @param ranges at least one, rising, each from the end of the one before, without that end
 */
public record CalibrationFactors(double from, List<RangeFactor> ranges) {
    public CalibrationFactors {
        ranges = List.copyOf(ranges);
        if (ranges.isEmpty()) {
            throw new IllegalArgumentException("factors must be one or more, were none");
        }
        double end = from;
        for (RangeFactor range : ranges) {
            if (!(end < range.upTo())) {
                throw new IllegalArgumentException("ranges must rise, was " + range.upTo() + " after " + end);
            }
            end = range.upTo();
        }
    }

    /** The same for every amount. */
    public static CalibrationFactors of(double factor) {
        return new CalibrationFactors(
                Double.NEGATIVE_INFINITY, List.of(new RangeFactor(Double.POSITIVE_INFINITY, factor)));
    }

    /**
     * The factor of the range in which an amount lies: beyond all ranges that of the nearest, as nothing better is known.
     *
     * @param displayed as the meter showed it
     */
    public double at(double displayed) {
        return ranges.stream()
                .filter(range -> displayed <= range.upTo())
                .findFirst()
                .orElseGet(() -> ranges.get(ranges.size() - 1))
                .factor();
    }

    /** Whether the certificate speaks of an amount. */
    public boolean covers(double displayed) {
        return displayed >= from && displayed <= upTo();
    }

    /** Where the last range ends. */
    public double upTo() {
        return ranges.get(ranges.size() - 1).upTo();
    }

    /** Whether one factor holds for all amounts. */
    public boolean isOne() {
        return Double.isInfinite(from);
    }

    /** Where a range begins, by its place. */
    public double beginOf(int place) {
        return place == 0 ? from : ranges.get(place - 1).upTo();
    }

    public boolean isCorrecting() {
        return ranges.stream().anyMatch(range -> range.factor() != 1);
    }
}
