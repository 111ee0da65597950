package dapple.archive.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Facing;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.reading.HistoryVerdict;
import dapple.reading.ReadingLine;
import dapple.reading.RecordedReading;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mockito.Answers;
import org.mockito.Mockito;

/** Weeks worked out by hand. */
class WeekTallyTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final LocalDate MONDAY = LocalDate.of(2026, 11, 16);
    private static final long ENCLOSURE = 7;

    private final WeekTally tally = new WeekTally(BERLIN);
    private long nextId = 1;

    /** ISO 8601: week 1 holds the first Thursday; a year that begins on a Thursday, as 2026, has 53 weeks. */
    @ParameterizedTest
    @CsvSource({"2026-01-01,2026-W01", "2026-12-31,2026-W53", "2027-01-03,2026-W53", "2027-01-04,2027-W01"})
    void weeksAreNamedByTheStandard(LocalDate day, String name) {
        assertThat(WeekColumns.name(WeekTally.monday(day))).isEqualTo(name);
    }

    @Test
    void aWeekBeginsOnMondayByTheClockOfTheSite() {
        read(PointRole.BASKING, "2026-11-15T22:59:00Z", State.TOO_WEAK);
        read(PointRole.BASKING, "2026-11-15T23:00:00Z", State.ON_TARGET);

        assertThat(week().asAWhole()).contains(WeekFound.ON_TARGET);
        assertThat(week().readings()).isEqualTo(1);
    }

    @Test
    void oneReadingOffTargetMakesItOffTarget() {
        read(PointRole.BASKING, "2026-11-17T10:00:00Z", State.ON_TARGET);
        read(PointRole.BASKING, "2026-11-18T10:00:00Z", State.TOO_WEAK);
        read(PointRole.BASKING, "2026-11-19T10:00:00Z", State.ON_TARGET);

        assertThat(week().asAWhole()).contains(WeekFound.OFF_TARGET);
    }

    @Test
    void pointsStandApart() {
        read(PointRole.BASKING, "2026-11-17T10:00:00Z", State.ON_TARGET);
        read(PointRole.SHADE, "2026-11-17T10:01:00Z", State.BORDERLINE);

        assertThat(week().at(PointRole.BASKING)).contains(WeekFound.ON_TARGET);
        assertThat(week().at(PointRole.SHADE)).contains(WeekFound.BORDERLINE);
        assertThat(week().at(PointRole.GRADIENT)).isEmpty();
        assertThat(week().asAWhole()).contains(WeekFound.BORDERLINE);
    }

    @Test
    void whatNobodyReadIsUnread() {
        assertThat(week().isRead()).isFalse();
        assertThat(week().asAWhole()).isEmpty();
    }

    @Test
    void twoVerdictsOfOneReadingAreOneReading() {
        ReadingLine line = line(PointRole.BASKING, "2026-11-17T10:00:00Z", State.ON_TARGET);
        tally.add(line);
        tally.add(line);

        assertThat(week().readings()).isEqualTo(1);
        assertThat(tally.readings()).isEqualTo(1);
    }

    /** Of four weeks due, three read, of which two on target; the empty one and one of nobody do not count. */
    @Test
    void sharesAreOfWhatWasDueAndOfWhatWasRead() {
        EnclosureYear year = new EnclosureYear(
                place(),
                List.of(
                        found(WeekDue.DUE, WeekFound.ON_TARGET),
                        found(WeekDue.DUE, WeekFound.ON_TARGET),
                        found(WeekDue.DUE, WeekFound.OFF_TARGET),
                        new EnclosureWeek(MONDAY, WeekDue.DUE, 0, Map.of()),
                        new EnclosureWeek(MONDAY, WeekDue.EMPTY, 0, Map.of()),
                        found(WeekDue.PLANNED_OFF, WeekFound.OFF_TARGET)));

        assertThat(year.shareRead()).contains(0.75);
        assertThat(year.shareOnTarget()).contains(2.0 / 3);
        assertThat(year.found(WeekFound.OFF_TARGET)).isEqualTo(1);
    }

    @Test
    void aShareOfNothingIsUnknown() {
        EnclosureYear year = new EnclosureYear(place(), List.of());

        assertThat(year.shareRead()).isEmpty();
        assertThat(year.shareOnTarget()).isEmpty();
    }

    private static EnclosureWeek found(WeekDue due, WeekFound found) {
        return new EnclosureWeek(MONDAY, due, 1, Map.of(PointRole.BASKING, found));
    }

    private EnclosureWeek week() {
        return tally.week(ENCLOSURE, MONDAY, WeekDue.DUE);
    }

    private void read(PointRole role, String at, State state) {
        tally.add(line(role, at, state));
    }

    private ReadingLine line(PointRole role, String at, State state) {
        Instant taken = Instant.parse(at);
        RecordedReading reading = new RecordedReading(
                nextId++,
                1,
                1,
                1,
                1,
                Quantity.UV_INDEX,
                3,
                Facing.STRONGEST,
                true,
                taken,
                taken,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        PointFacts point = new PointFacts(
                1,
                ENCLOSURE,
                "P1",
                "a place",
                role,
                Facing.STRONGEST,
                Optional.empty(),
                List.of(Quantity.UV_INDEX),
                Set.of());
        HistoryVerdict verdict = new HistoryVerdict(
                reading.id(),
                Optional.of(1L),
                Optional.of(state),
                3,
                new Interval(2, 4),
                Optional.of(1),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                taken,
                Optional.empty());
        return new ReadingLine(
                reading,
                point,
                place(),
                Mockito.mock(MeterFacts.class, Answers.RETURNS_DEFAULTS),
                Optional.of(verdict),
                Optional.empty(),
                Optional.empty());
    }

    private static EnclosureFacts place() {
        return new EnclosureFacts(ENCLOSURE, "E07", 1, "Dry room", Optional.empty(), Optional.empty());
    }
}
