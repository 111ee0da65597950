package dapple.drawing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Time to the right, with months. */
record TimeAxis(Instant from, Instant until, double left, double right, ZoneId zone) {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.UK);
    private static final DateTimeFormatter MONTH_OF_YEAR = DateTimeFormatter.ofPattern("MMM uuuu", Locale.UK);
    private static final double ROOM_OF_A_MONTH = 34;
    private static final double ROOM_OF_A_YEAR = 66;

    static TimeAxis of(LocalDate from, LocalDate until, StripSize size, ZoneId zone) {
        return new TimeAxis(
                from.atStartOfDay(zone).toInstant(),
                until.atStartOfDay(zone).toInstant(),
                size.left(),
                size.right(),
                zone);
    }

    /** Where an instant lies; outside the drawing at its edge. */
    double x(Instant at) {
        if (!at.isAfter(from)) {
            return left;
        }
        if (!at.isBefore(until)) {
            return right;
        }
        double share = (double) Duration.between(from, at).toMillis()
                / Duration.between(from, until).toMillis();
        return Rounded.of(left + share * (right - left));
    }

    double x(LocalDate day) {
        return x(day.atStartOfDay(zone).toInstant());
    }

    /** The months of the drawing; the first that has room for it, and every January, with the year. */
    List<StripFrame.Month> months() {
        LocalDate first = LocalDate.ofInstant(from, zone).withDayOfMonth(1);
        List<LocalDate> months = Stream.iterate(first, month -> month.plusMonths(1))
                .takeWhile(month -> month.atStartOfDay(zone).toInstant().isBefore(until))
                .toList();
        Optional<LocalDate> named =
                months.stream().filter(month -> width(month) >= ROOM_OF_A_YEAR).findFirst();
        return months.stream().map(month -> month(month, named)).toList();
    }

    private StripFrame.Month month(LocalDate month, Optional<LocalDate> named) {
        boolean hasYear = named.filter(month::equals).isPresent() || month.getMonthValue() == 1;
        DateTimeFormatter format = hasYear && width(month) >= ROOM_OF_A_YEAR ? MONTH_OF_YEAR : MONTH;
        String label = width(month) >= ROOM_OF_A_MONTH ? format.format(month) : "";
        return new StripFrame.Month(
                x(month),
                month.atStartOfDay(zone).toInstant().isBefore(from),
                Rounded.of(x(month) + width(month) / 2),
                label);
    }

    private double width(LocalDate month) {
        return x(month.plusMonths(1)) - x(month);
    }
}
