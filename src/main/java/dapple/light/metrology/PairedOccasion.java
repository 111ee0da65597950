package dapple.light.metrology;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * All pairs of two meters that were read one after the other.
 *
 * @param at of the last of them
 * @param lnRatio median of ln(first/second)
 * @param standardError of the median; with what each meter's day and each set of lamps add
 * @param pairs how many
 */
public record PairedOccasion(Instant at, double lnRatio, double standardError, int pairs) {
    /** A longer gap begins another occasion (ours). */
    private static final Duration GAP = Duration.ofHours(12);

    /** π/2: variance of the median over that of the mean. */
    private static final double OF_MEDIAN = Math.PI / 2;

    static List<PairedOccasion> of(List<ReadPair> pairs, DriftSettings settings) {
        List<PairedOccasion> occasions = new ArrayList<>();
        int from = 0;
        for (int next = 1; next <= pairs.size(); next++) {
            if (next == pairs.size() || isApart(pairs.get(next - 1), pairs.get(next))) {
                occasions.add(one(pairs.subList(from, next), settings));
                from = next;
            }
        }
        return occasions;
    }

    private static boolean isApart(ReadPair earlier, ReadPair later) {
        return Duration.between(earlier.at(), later.at()).compareTo(GAP) > 0;
    }

    private static PairedOccasion one(List<ReadPair> pairs, DriftSettings settings) {
        long sets = pairs.stream()
                .map(pair -> pair.first().lamps().key())
                .distinct()
                .count();
        double own = pairs.stream().mapToDouble(ReadPair::variance).average().orElseThrow();
        double day = settings.lnDay() * settings.lnDay();
        double mismatch = settings.lnMismatch() * settings.lnMismatch();
        double variance = (pairs.size() > 2 ? OF_MEDIAN : 1) * own / pairs.size() + 2 * (day + mismatch / sets);
        return new PairedOccasion(
                pairs.get(pairs.size() - 1).at(),
                Middle.of(pairs.stream().map(ReadPair::lnRatio).toList()),
                Math.sqrt(variance),
                pairs.size());
    }

    double weight() {
        return 1 / (standardError * standardError);
    }
}
