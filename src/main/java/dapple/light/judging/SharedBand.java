package dapple.light.judging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the ranges of several animals leave to an exhibit that they share.
 *
 * @param common the range that serves all of them; none if two ranges do not meet
 * @param served the ranges that serve at least one of them, lowest first, never touching one another
 * @param gaps the ranges between those, which serve nobody; their ends serve somebody
 */
public record SharedBand(Optional<Band> common, List<Band> served, List<Band> gaps) {
    /**
     * Intersection, union, and what lies between.
     *
     * @param bands at least one
     */
    public static SharedBand of(List<Band> bands) {
        if (bands.isEmpty()) {
            throw new IllegalArgumentException("a shared band must have at least one band, had none");
        }
        List<Band> served = union(bands);
        return new SharedBand(common(bands), served, between(served));
    }

    /**
     * The part of the common range that lies below a ceiling.
     *
     * @return none if no amount that serves all lies below it
     */
    public Optional<Band> commonBelow(double ceiling) {
        return common.filter(band -> band.low() < ceiling)
                .map(band -> new Band(band.low(), Math.min(band.high(), ceiling)));
    }

    /**
     * The strictest of several upper limits, as of shade or of a ceiling: it serves all.
     *
     * @return none if there are no limits
     */
    public static OptionalDouble strictest(List<Double> highs) {
        return highs.stream().mapToDouble(Double::doubleValue).min();
    }

    private static Optional<Band> common(List<Band> bands) {
        double low = bands.stream().mapToDouble(Band::low).max().orElseThrow();
        double high = bands.stream().mapToDouble(Band::high).min().orElseThrow();
        return low <= high ? Optional.of(new Band(low, high)) : Optional.empty();
    }

    private static List<Band> union(List<Band> bands) {
        List<Band> merged = new ArrayList<>();
        for (Band band :
                bands.stream().sorted(Comparator.comparingDouble(Band::low)).toList()) {
            int last = merged.size() - 1;
            if (last >= 0 && band.low() <= merged.get(last).high()) {
                Band lower = merged.get(last);
                merged.set(last, new Band(lower.low(), Math.max(lower.high(), band.high())));
            } else {
                merged.add(band);
            }
        }
        return List.copyOf(merged);
    }

    private static List<Band> between(List<Band> served) {
        List<Band> gaps = new ArrayList<>();
        for (int upper = 1; upper < served.size(); upper++) {
            double low = served.get(upper - 1).high();
            double high = served.get(upper).low();
            gaps.add(new Band(low, high));
        }
        return List.copyOf(gaps);
    }
}
