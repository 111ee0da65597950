package dapple.animal;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.util.Optional;
import java.util.regex.Pattern;

/** When an animal was hatched or born, as far as it is known: a year, or a day. */
public record BornAbout(Year year, Optional<LocalDate> day) {
    private static final Pattern YEAR = Pattern.compile("[0-9]{4}");
    private static final int FIRST_YEAR = 1850;

    /** Reads a year or a day, as 2019 or 2019-05-03. */
    static Optional<BornAbout> read(String typed) {
        try {
            return YEAR.matcher(typed).matches()
                    ? Optional.of(new BornAbout(Year.parse(typed), Optional.empty()))
                    : Optional.of(on(LocalDate.parse(typed)));
        } catch (DateTimeException neither) {
            return Optional.empty();
        }
    }

    private static BornAbout on(LocalDate day) {
        return new BornAbout(Year.from(day), Optional.of(day));
    }

    /** Whether it can be said on a day: not before it, and not of an animal older than any. */
    boolean isPossibleOn(LocalDate today) {
        return year.getValue() >= FIRST_YEAR
                && year.getValue() <= today.getYear()
                && day.filter(today::isBefore).isEmpty();
    }

    /** As it is read. */
    public String text() {
        return day.map(LocalDate::toString).orElseGet(year::toString);
    }
}
