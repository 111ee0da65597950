package dapple.comparison;

import dapple.light.metrology.PairedMeters;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How far a comparison is: it follows from what was read since it began.
 *
 * @param points in the order in which they are read
 */
record Progress(List<AtPoint> points) {
    Progress {
        points = List.copyOf(points);
    }

    /**
     * One point.
     *
     * @param readAt when each meter read it last, in the order of the meters; empty: not yet
     * @param counts whether every two meters read it within an hour
     */
    record AtPoint(long pointId, List<Optional<Instant>> readAt, boolean counts) {
        AtPoint {
            readAt = List.copyOf(readAt);
        }

        /** Whether every meter has read it, but too long after one another. */
        public boolean isTooFarApart() {
            return !counts && readAt.stream().allMatch(Optional::isPresent);
        }
    }

    static Progress of(ComparisonFacts comparison, List<MeterRead> reads) {
        return new Progress(comparison.pointIds().stream()
                .map(point -> at(
                        point,
                        comparison.meterIds(),
                        reads.stream().filter(read -> read.pointId() == point).toList()))
                .toList());
    }

    private static AtPoint at(long point, List<Long> meters, List<MeterRead> there) {
        List<Optional<Instant>> last = meters.stream()
                .map(meter -> there.stream()
                        .filter(read -> read.meterId() == meter)
                        .map(MeterRead::at)
                        .max(Comparator.naturalOrder()))
                .toList();
        boolean counts = meters.stream()
                .allMatch(
                        one -> meters.stream().filter(other -> other > one).allMatch(other -> meet(one, other, there)));
        return new AtPoint(point, last, counts);
    }

    private static boolean meet(long one, long other, List<MeterRead> there) {
        return there.stream()
                .filter(read -> read.meterId() == one)
                .anyMatch(first -> there.stream()
                        .filter(read -> read.meterId() == other)
                        .anyMatch(second -> areClose(first.at(), second.at())));
    }

    private static boolean areClose(Instant one, Instant other) {
        return Duration.between(one, other).abs().compareTo(PairedMeters.CLOSE) <= 0;
    }

    public boolean isComplete() {
        return points.stream().allMatch(AtPoint::counts);
    }

    /** How many points count by now. */
    public long done() {
        return points.stream().filter(AtPoint::counts).count();
    }
}
