package dapple.light.metrology;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Readings of a dozen enclosures of a simulated collection, up to some weeks after one of its meters was knocked: for tests
 * of what is built on the search.
 */
public record SimulatedReadings(List<Compared> readings, String knockedMeter, Instant knockedAt) {
    /** Six doors of each of two rounds, which have two usual meters. */
    private static final Set<String> DOORS = IntStream.concat(IntStream.range(0, 6), IntStream.range(10, 16))
            .mapToObj(Integer::toString)
            .collect(Collectors.toSet());

    /**
     * Those of a seed.
     *
     * @param lnShift what the knock did to the logarithm of the gain
     */
    public static SimulatedReadings of(long seed, double lnShift, int weeksAfter) {
        SimulatedCollection simulated = new SimulatedCollection(seed, new SimulatedCollection.Knock(lnShift));
        Instant end = simulated.knockedAt().plus(Duration.ofDays(7L * weeksAfter));
        return new SimulatedReadings(
                simulated.readings().stream()
                        .filter(reading -> reading.at().isBefore(end))
                        .filter(reading -> DOORS.contains(door(reading)))
                        .toList(),
                simulated.faultyMeter(),
                simulated.knockedAt());
    }

    /** The number of the enclosure. */
    public static String door(Compared reading) {
        return reading.point().substring(0, reading.point().indexOf('.'));
    }
}
