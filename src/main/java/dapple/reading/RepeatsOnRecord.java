package dapple.reading;

import dapple.light.metrology.Repeats;
import dapple.light.metrology.RepeatsTaken;
import dapple.site.Given;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The amounts beside readings that were repeated. */
@Component
class RepeatsOnRecord {
    private final ReadingRepeatRepository repeats;

    RepeatsOnRecord(ReadingRepeatRepository repeats) {
        this.repeats = repeats;
    }

    /** In the transaction that stores the reading. */
    void keep(Reading reading, RepeatsTaken taken) {
        List<Double> amounts = taken.amounts();
        repeats.saveAllAndFlush(IntStream.range(0, amounts.size())
                .mapToObj(at -> new ReadingRepeat(reading, at + 1, amounts.get(at)))
                .toList());
    }

    Map<Long, RepeatsTaken> ofVisit(long visitId) {
        return byReading(repeats.ofVisit(visitId));
    }

    /** Those of readings that were repeated, by reading. */
    @Transactional(readOnly = true)
    public Map<Long, RepeatsTaken> ofReadings(long siteId, Collection<Long> readingIds) {
        return readingIds.isEmpty() ? Map.of() : byReading(repeats.ofReadings(siteId, readingIds));
    }

    /** What there is to tell of the repeats of a page of readings, by reading. */
    @Transactional(readOnly = true)
    public Map<Long, List<ToldRepeats>> told(long siteId, Collection<HistoryLine> lines) {
        Map<Long, RepeatsTaken> taken = ofReadings(
                siteId, lines.stream().map(line -> line.reading().id()).toList());
        return lines.stream()
                .filter(line -> taken.containsKey(line.reading().id()))
                .collect(Collectors.toMap(
                        line -> line.reading().id(),
                        line -> ToldRepeats.of(
                                Given.of(taken.get(line.reading().id())),
                                line.reading().amount(),
                                line.meter().uncertainty().resolution())));
    }

    /** The three whose median a reading is; none where it is one amount, as that was over the ceiling. */
    static List<Double> behind(Reading reading, RepeatsTaken taken) {
        return taken.counting()
                .filter(three -> three.median() == reading.amount())
                .map(Repeats::amounts)
                .orElse(List.of());
    }

    private static Map<Long, RepeatsTaken> byReading(List<ReadingRepeat> found) {
        return found.stream()
                .collect(Collectors.groupingBy(
                        ReadingRepeat::readingId,
                        Collectors.collectingAndThen(
                                Collectors.mapping(ReadingRepeat::amount, Collectors.toList()), RepeatsTaken::new)));
    }
}
