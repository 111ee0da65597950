package dapple.review;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What was read over the ceiling of one enclosure and nobody has seen yet, oldest first; it is seen together. */
public record EnclosureAlarm(String enclosure, List<AlarmFacts> readings) {
    public EnclosureAlarm {
        readings = List.copyOf(readings);
    }

    static List<EnclosureAlarm> of(List<AlarmFacts> unseen) {
        Map<String, List<AlarmFacts>> byEnclosure = unseen.stream()
                .collect(Collectors.groupingBy(AlarmFacts::enclosure, LinkedHashMap::new, Collectors.toList()));
        return byEnclosure.entrySet().stream()
                .map(one -> new EnclosureAlarm(one.getKey(), one.getValue()))
                .toList();
    }

    /** What holds still of the worst. */
    public AlarmFacts.Now now() {
        return readings.stream()
                .map(AlarmFacts::now)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The last that whoever answers has been shown. */
    public long newestId() {
        return readings.stream().mapToLong(AlarmFacts::id).max().orElseThrow();
    }
}
