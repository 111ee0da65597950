package dapple.drawing;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;

/** What a dose strip is drawn of: weeks in any order, lanes from top to bottom. A week that is not given is unknown. */
public record DoseHistory(ZoneId zone, List<DoseWeek> weeks, List<Lane> lanes) {
    public DoseHistory {
        weeks = weeks.stream().sorted(Comparator.comparing(DoseWeek::from)).toList();
        lanes = List.copyOf(lanes);
    }

    /** The weeks of a drawing. */
    List<DoseWeek> weeks(LocalDate from, LocalDate until) {
        return weeks.stream()
                .filter(week -> !week.from().isBefore(from) && week.from().isBefore(until))
                .toList();
    }
}
