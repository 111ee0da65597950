package dapple.archive.sheet;

import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.reading.HistoryVerdict;
import dapple.reading.ReadingLine;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/** Counts readings into the weeks of their enclosures; holds what is found of weeks, never readings. */
final class WeekTally {
    private final ZoneId zone;
    private final Map<Key, Counted> weeks = new HashMap<>();
    private long readings;
    private long lastReading;

    WeekTally(ZoneId zone) {
        this.zone = zone;
    }

    static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** Takes lines reading by reading: those of one follow one another. */
    void add(ReadingLine line) {
        boolean isNext = line.reading().id() != lastReading;
        lastReading = line.reading().id();
        if (!line.reading().isStanding()) {
            return;
        }
        readings += isNext ? 1 : 0;
        if (line.reading().heldAsAsked() && line.point().role() != PointRole.KEEPER) {
            weeks.computeIfAbsent(key(line), week -> new Counted()).add(line, isNext);
        }
    }

    private Key key(ReadingLine line) {
        Instant at = line.reading().takenAt();
        return new Key(line.enclosure().id(), monday(LocalDate.ofInstant(at, zone)));
    }

    /** How many readings count, of all points. */
    long readings() {
        return readings;
    }

    EnclosureWeek week(long enclosureId, LocalDate monday, WeekDue due) {
        Counted counted = weeks.getOrDefault(new Key(enclosureId, monday), new Counted());
        return new EnclosureWeek(monday, due, counted.readings, counted.found);
    }

    private record Key(long enclosureId, LocalDate monday) {}

    private static final class Counted {
        private final Map<PointRole, WeekFound> found = new EnumMap<>(PointRole.class);
        private int readings;

        void add(ReadingLine line, boolean isNext) {
            readings += isNext ? 1 : 0;
            State state = line.verdict().flatMap(HistoryVerdict::state).orElse(State.NO_TARGET);
            found.merge(line.point().role(), WeekFound.of(state), WeekFound::or);
        }
    }
}
