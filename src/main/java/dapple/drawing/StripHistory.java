package dapple.drawing;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;

/**
 * What a strip is drawn of: one point and one quantity. Readings, targets and events in any order; those before the
 * drawing tell where its first line comes from.
 */
public record StripHistory(
        Quantity quantity,
        ZoneId zone,
        List<StripReading> readings,
        List<StripTarget> targets,
        List<StripEvent> events) {
    public StripHistory {
        readings =
                readings.stream().sorted(Comparator.comparing(StripReading::at)).toList();
        targets =
                targets.stream().sorted(Comparator.comparing(StripTarget::from)).toList();
        events = events.stream().sorted(Comparator.comparing(StripEvent::at)).toList();
    }

    /** As much of it as ends with a day and fits the drawing. */
    Window window(StripSize size, LocalDate lastDay) {
        LocalDate end = lastDay.plusDays(1);
        return new Window(
                end.minusWeeks(size.weeks()).atStartOfDay(zone).toInstant(),
                end.atStartOfDay(zone).toInstant());
    }

    /** From a beginning until before an end. */
    record Window(Instant from, Instant until) {
        boolean contains(Instant at) {
            return !at.isBefore(from) && at.isBefore(until);
        }
    }
}
