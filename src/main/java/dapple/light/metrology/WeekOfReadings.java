package dapple.light.metrology;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** All readings of one week, held against what was expected of them before any of them was known. */
final class WeekOfReadings {
    /** Variance of ln above which nothing is expected of a point: it is new. */
    private static final double UNKNOWN = 1;

    /** Fewer sets of lamps do not tell what a meter's readings have in common. */
    private static final int LEAST_SETS = 4;

    private final List<Sighting> sightings;
    private final double scatter;
    private final Map<Integer, Double> precisions;
    private final Map<Sighting, Innovation> innovations = new HashMap<>();
    private final Map<Sighting, Double> differences = new HashMap<>();
    private Function<Compared, LampFilter> filters = reading -> {
        throw new IllegalStateException("nothing is expected yet");
    };

    WeekOfReadings(List<Sighting> sightings, double scatter) {
        this.sightings = sightings;
        this.scatter = scatter;
        this.precisions = sightings.stream()
                .collect(Collectors.groupingBy(
                        Sighting::meter, Collectors.summingDouble(sighting -> 1 / noise(sighting))));
    }

    List<Sighting> sightings() {
        return sightings;
    }

    /** Asks the lamps' filters, which are at the time of the readings, what to expect. */
    void expect(Function<Compared, LampFilter> filters, double[] gains) {
        this.filters = filters;
        for (Sighting sighting : sightings) {
            Innovation innovation = filters.apply(sighting.reading()).innovation(sighting);
            if (innovation.variance() < UNKNOWN) {
                innovations.put(sighting, innovation);
            }
        }
        byMeter().forEach((meter, ofMeter) -> centre(ofMeter, gains));
    }

    private void centre(List<Sighting> ofMeter, double[] gains) {
        boolean isEnough = bySet(ofMeter).size() >= LEAST_SETS;
        double centre = isEnough ? Middle.of(all(ofMeter, gains)) : 0;
        ofMeter.forEach(
                sighting -> differences.put(sighting, innovation(sighting).withGains(gains) - centre));
    }

    private Innovation innovation(Sighting sighting) {
        return Objects.requireNonNull(innovations.get(sighting));
    }

    private double difference(Sighting sighting) {
        return Objects.requireNonNull(differences.get(sighting));
    }

    private List<Double> all(List<Sighting> some, double[] gains) {
        return some.stream()
                .map(sighting -> innovation(sighting).withGains(gains))
                .toList();
    }

    private Map<Integer, List<Sighting>> byMeter() {
        return expected().stream().collect(Collectors.groupingBy(Sighting::meter));
    }

    /** The readings of which something was expected. */
    List<Sighting> expected() {
        return sightings.stream().filter(innovations::containsKey).toList();
    }

    static Map<String, List<Sighting>> bySet(List<Sighting> some) {
        return some.stream()
                .collect(Collectors.groupingBy(
                        sighting -> sighting.reading().lamps().key()));
    }

    /** Of the mean over all readings by a meter: Σ 1/variance. */
    double precision(int meter) {
        return precisions.getOrDefault(meter, 0.0);
    }

    boolean isExpected(Sighting sighting) {
        return innovations.containsKey(sighting);
    }

    /** A reading's own variance, ln². */
    double noise(Sighting sighting) {
        double own = scatter * sighting.reading().lnUncertainty();
        return own * own;
    }

    /** ln(reading/expected) without what all readings by the meter have in common, in standard deviations. */
    double standard(Sighting sighting) {
        return difference(sighting) / Math.sqrt(innovation(sighting).variance() + noise(sighting));
    }

    List<Double> standardised() {
        return expected().stream().map(this::standard).toList();
    }

    /** The same of the mean over one set of lamps. */
    double standard(List<Sighting> ofSet) {
        double mean = ofSet.stream().mapToDouble(this::difference).average().orElse(0);
        return mean / Math.sqrt(varianceOfMean(ofSet));
    }

    private double varianceOfMean(List<Sighting> ofSet) {
        LampFilter filter = filters.apply(ofSet.get(0).reading());
        double sum = 0;
        for (Sighting one : ofSet) {
            sum += noise(one);
            for (Sighting other : ofSet) {
                sum += filter.covariance(one, other);
            }
        }
        return sum / ofSet.size() / ofSet.size();
    }

    /** How each meter's readings lie by the median over sets of lamps. */
    List<Shift> shifts(double[] gains) {
        List<Shift> shifts = new ArrayList<>();
        byMeter().forEach((meter, ofMeter) -> shifts.add(shift(meter, ofMeter, gains)));
        return shifts;
    }

    private Shift shift(int meter, List<Sighting> ofMeter, double[] gains) {
        List<List<Sighting>> sets = List.copyOf(bySet(ofMeter).values());
        List<Double> means = sets.stream()
                .map(set -> all(set, gains).stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow())
                .toList();
        double median = Middle.of(means);
        double scatterOfMeans =
                Middle.of(means.stream().map(mean -> Math.abs(mean - median)).toList()) / NORMAL_MIDDLE;
        double stated = Math.sqrt(
                sets.stream().mapToDouble(this::varianceOfMean).average().orElseThrow());
        double error = OF_MEDIAN * Math.max(scatterOfMeans, stated) / Math.sqrt(sets.size());
        return new Shift(meter, median, error, sets.size());
    }

    /** Median of |z| where z is normal. */
    private static final double NORMAL_MIDDLE = 0.6745;

    /** √(π/2): the median's standard error over the mean's. */
    private static final double OF_MEDIAN = 1.2533;

    /** A {@link WeekOfMeter} before the meter and the week have their names. */
    record Shift(int meter, double lnShift, double standardError, int enclosures) {
        WeekOfMeter named(List<String> meters, Instant from) {
            return new WeekOfMeter(meters.get(meter), from, lnShift, standardError, enclosures);
        }
    }
}
