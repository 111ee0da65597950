package dapple.agreement;

import dapple.light.quantity.Interval;
import java.time.Instant;
import java.util.Optional;

/**
 * Two meters that were read at the same points within an hour.
 *
 * @param first id of the meter that stands above the line of the ratio
 * @param newestAt when last
 * @param lnRatio ln(first/second) then
 * @param lnPerYear how fast that changes; none: too few occasions
 */
record PairShown(
        long first,
        long second,
        Instant newestAt,
        int occasions,
        double lnRatio,
        Interval lnInterval,
        Optional<Double> lnPerYear,
        Optional<Interval> lnPerYearInterval) {
    public double percent() {
        return Percent.of(lnRatio);
    }

    public double lowPercent() {
        return Percent.of(lnInterval.low());
    }

    public double highPercent() {
        return Percent.of(lnInterval.high());
    }

    public Optional<Double> percentPerYear() {
        return lnPerYear.map(Percent::of);
    }

    public double lowPercentPerYear() {
        return Percent.of(lnPerYearInterval.map(Interval::low).orElseThrow());
    }

    public double highPercentPerYear() {
        return Percent.of(lnPerYearInterval.map(Interval::high).orElseThrow());
    }
}
