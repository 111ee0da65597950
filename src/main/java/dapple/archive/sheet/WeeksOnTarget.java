package dapple.archive.sheet;

import dapple.animal.Animals;
import dapple.animal.StayFacts;
import dapple.archive.RecordMaking;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.reading.ReadingLines;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Finds the weeks of a record, by the readings that its sheet has counted. */
@Component
class WeeksOnTarget {
    private final ReadingLines lines;
    private final Enclosures enclosures;
    private final Animals animals;

    WeeksOnTarget(ReadingLines lines, Enclosures enclosures, Animals animals) {
        this.lines = lines;
        this.enclosures = enclosures;
        this.animals = animals;
    }

    YearOfWeeks of(RecordMaking making) {
        return making.found(YearOfWeeks.class, () -> find(making));
    }

    private YearOfWeeks find(RecordMaking making) {
        WeekTally tally = making.found(WeekTally.class, () -> count(making));
        List<EnclosureFacts> places = enclosures.all(making.siteId());
        Due due = new Due(
                making.span().site().timeZone(),
                animals.staysDuring(making.siteId(), making.from(), making.until()),
                enclosures.plannedOff(
                        making.siteId(),
                        places.stream().map(EnclosureFacts::id).toList(),
                        making.from(),
                        making.until()));
        return new YearOfWeeks(
                places.stream()
                        .map(place -> new EnclosureYear(
                                place,
                                mondays(making)
                                        .map(monday -> tally.week(place.id(), monday, due.of(place, monday)))
                                        .toList()))
                        .toList(),
                tally.readings());
    }

    private WeekTally count(RecordMaking making) {
        WeekTally tally = new WeekTally(making.span().site().timeZone());
        lines.taken(making.siteId(), making.from(), making.span().to(), tally::add);
        return tally;
    }

    /** Of every week that has a day in the record. */
    private static Stream<LocalDate> mondays(RecordMaking making) {
        return WeekTally.monday(making.firstDay())
                .datesUntil(making.lastDay().plusDays(1))
                .filter(day -> day.equals(WeekTally.monday(day)));
    }

    /** When there was something to read. */
    private record Due(ZoneId zone, List<StayFacts> stays, List<PlannedOffTime> off) {
        WeekDue of(EnclosureFacts place, LocalDate monday) {
            Instant begin = monday.atStartOfDay(zone).toInstant();
            Instant end = monday.plusWeeks(1).atStartOfDay(zone).toInstant();
            if (place.retiredAt().filter(at -> !at.isAfter(begin)).isPresent()) {
                return WeekDue.OUT_OF_USE;
            }
            if (stays.stream().noneMatch(stay -> stay.enclosureId() == place.id() && overlaps(stay, begin, end))) {
                return WeekDue.EMPTY;
            }
            boolean isOff = off.stream()
                    .filter(time -> time.enclosureId() == place.id())
                    .anyMatch(time -> !time.from().isAfter(begin) && isAfter(time.to(), end));
            return isOff ? WeekDue.PLANNED_OFF : WeekDue.DUE;
        }

        private static boolean overlaps(StayFacts stay, Instant begin, Instant end) {
            return stay.from().isBefore(end)
                    && stay.to().filter(to -> !to.isAfter(begin)).isEmpty();
        }

        private static boolean isAfter(Optional<Instant> to, Instant end) {
            return to.filter(at -> at.isBefore(end)).isEmpty();
        }
    }
}
