package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A reading in the history of an enclosure.
 *
 * @param first what was said of it when it was taken
 * @param now what it is judged to be by what is known now
 */
record HistoryLine(
        RecordedReading reading,
        PointFacts point,
        MeterFacts meter,
        List<HistoryVerdict> first,
        List<HistoryVerdict> now) {

    static HistoryLine of(RecordedReading reading, PointFacts point, MeterFacts meter, List<HistoryVerdict> all) {
        Instant begin = all.stream()
                .map(HistoryVerdict::judgedAt)
                .min(Comparator.naturalOrder())
                .orElse(Instant.MAX);
        List<HistoryVerdict> first = all.stream()
                .filter(verdict -> !verdict.judgedAt().isAfter(begin))
                .toList();
        List<HistoryVerdict> now =
                all.stream().filter(HistoryVerdict::isStanding).toList();
        return new HistoryLine(reading, point, meter, first, now);
    }

    /** Whether people were told something else than is found now. */
    public boolean isJudgedOtherwise() {
        return reading.isStanding() && !told(first).equals(told(now));
    }

    private static Set<HistoryVerdict.Told> told(List<HistoryVerdict> verdicts) {
        return verdicts.stream().map(HistoryVerdict::told).collect(Collectors.toSet());
    }
}
