package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A reading that was the newest of its point and quantity at an instant.
 *
 * @param standsThen whether it counted by what had been recorded then
 * @param told what people were told of it at that instant; empty if it had not been recorded
 * @param now what it is judged to be by what is known now; empty if it does not count any more
 */
public record ReadingOnRecord(
        RecordedReading reading,
        PointFacts point,
        MeterFacts meter,
        boolean standsThen,
        List<HistoryVerdict> told,
        List<HistoryVerdict> now) {

    /** Whether what is found now differs from what people were told. */
    public boolean isJudgedOtherwise() {
        return !said(told).equals(said(now));
    }

    private static Set<HistoryVerdict.Told> said(List<HistoryVerdict> verdicts) {
        return verdicts.stream().map(HistoryVerdict::told).collect(Collectors.toSet());
    }
}
