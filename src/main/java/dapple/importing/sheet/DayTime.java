package dapple.importing.sheet;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A day as it is written, with the time where there is one.
 *
 * @param offset from universal time, where the sheet gives it
 */
public record DayTime(LocalDate day, Optional<LocalTime> time, Optional<ZoneOffset> offset) {
    /** What stands for a day of which no time is known. */
    private static final LocalTime NOON = LocalTime.NOON;

    private static final int FIRST_YEAR = 1950;
    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);
    private static final DateTimeFormatter WRITTEN_WITH_TIME =
            DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.UK);

    DayTime(LocalDate day) {
        this(day, Optional.empty(), Optional.empty());
    }

    /** The same day at a time that stands in another column. */
    public DayTime at(LocalTime other) {
        return new DayTime(day, Optional.of(other), Optional.empty());
    }

    public boolean isDayOnly() {
        return time.isEmpty();
    }

    /**
     * The instant that was meant, in the time of a site; noon of a day alone.
     *
     * @throws BadCellException if the clocks skip it or show it twice, or it lies ahead
     */
    public Instant instant(ZoneId zone, Instant now) {
        LocalDateTime local = day.atTime(time.orElse(NOON));
        if (local.getYear() < FIRST_YEAR) {
            throw new BadCellException(Reason.YEAR_IMPOSSIBLE, WRITTEN.format(day));
        }
        Instant at = local.toInstant(offset.orElseGet(() -> only(local, zone)));
        if (at.isAfter(now)) {
            throw new BadCellException(Reason.IN_FUTURE, WRITTEN.format(day));
        }
        return at;
    }

    /** The day, if it has been. */
    public LocalDate past(ZoneId zone, Instant now) {
        if (day.getYear() < FIRST_YEAR) {
            throw new BadCellException(Reason.YEAR_IMPOSSIBLE, WRITTEN.format(day));
        }
        if (day.isAfter(LocalDate.ofInstant(now, zone))) {
            throw new BadCellException(Reason.IN_FUTURE, WRITTEN.format(day));
        }
        return day;
    }

    private static ZoneOffset only(LocalDateTime local, ZoneId zone) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.size() == 1) {
            return offsets.get(0);
        }
        Reason reason = offsets.isEmpty() ? Reason.TIME_SKIPPED : Reason.TIME_TWICE;
        throw new BadCellException(reason, WRITTEN_WITH_TIME.format(local));
    }

    static LocalDate day(int year, int month, int dayOfMonth, String cell) {
        try {
            return LocalDate.of(year, month, dayOfMonth);
        } catch (DateTimeException impossible) {
            throw new BadCellException(Reason.NOT_A_DAY, cell);
        }
    }
}
