package dapple.light.metrology;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Two meters at the same points close in time: ln of their ratio, occasion by occasion, and how it drifts. Asks nothing of
 * the lamps.
 *
 * @param first key of the meter whose readings stand above the line of the ratio
 * @param second key of the other one
 * @param occasions in order, at least 1
 */
public record PairedMeters(String first, String second, List<PairedOccasion> occasions) {
    /** Readings so close together are a pair: neither lamps nor warmth have changed (ours). */
    public static final Duration CLOSE = Duration.ofHours(1);

    /** Fewer occasions give no drift. */
    private static final int LEAST_OCCASIONS = 3;

    private static final double YEAR_SECONDS = 365.25 * 86400;

    public PairedMeters {
        occasions = List.copyOf(occasions);
    }

    /** All meters that were read in pairs, each two of them once. */
    public static List<PairedMeters> of(List<Compared> readings, DriftSettings settings) {
        TreeMap<List<String>, List<ReadPair>> pairs = ReadPair.of(readings, CLOSE).stream()
                .collect(Collectors.groupingBy(
                        ReadPair::meters,
                        () -> new TreeMap<>(Comparator.comparing(Object::toString)),
                        Collectors.toList()));
        List<PairedMeters> paired = new ArrayList<>();
        pairs.forEach((meters, ofThem) ->
                paired.add(new PairedMeters(meters.get(0), meters.get(1), PairedOccasion.of(ofThem, settings))));
        return paired;
    }

    /** ln(first/second) on the newest occasion. */
    public Change newest() {
        PairedOccasion last = occasions.get(occasions.size() - 1);
        return Change.of(last.lnRatio(), last.standardError());
    }

    /**
     * How fast ln(first/second) changes, per year, by a straight line through the occasions, each by its standard error.
     *
     * @return nothing for fewer than three occasions
     */
    public Optional<Change> drift() {
        return occasions.size() < LEAST_OCCASIONS ? Optional.empty() : Optional.of(line());
    }

    private Change line() {
        double weights = occasions.stream().mapToDouble(PairedOccasion::weight).sum();
        double centre = occasions.stream()
                        .mapToDouble(occasion -> occasion.weight() * years(occasion.at()))
                        .sum()
                / weights;
        double spread = 0;
        double sum = 0;
        for (PairedOccasion occasion : occasions) {
            double away = years(occasion.at()) - centre;
            spread += occasion.weight() * away * away;
            sum += occasion.weight() * away * occasion.lnRatio();
        }
        return Change.of(sum / spread, 1 / Math.sqrt(spread));
    }

    private double years(Instant at) {
        return Duration.between(occasions.get(0).at(), at).toSeconds() / YEAR_SECONDS;
    }
}
