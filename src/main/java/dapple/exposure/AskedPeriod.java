package dapple.exposure;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The period that somebody asked for, as typed.
 *
 * @param wrongFrom key of the message at the first day, where it is wrong
 * @param wrongTo key of the message at the last day, where it is wrong
 * @param period what is shown: the usual one where what was typed is wrong
 */
public record AskedPeriod(String from, String to, Optional<String> wrongFrom, Optional<String> wrongTo, Period period) {
    /** What a vet looks back over at least; common practice, no source. */
    private static final int USUAL_MONTHS = 6;

    private static final int MOST_YEARS = 2;
    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2199;

    /**
     * Reads what was typed.
     *
     * @param last the last day there can be anything to see
     */
    static AskedPeriod of(@Nullable String from, @Nullable String to, LocalDate last) {
        String typedFrom = from == null ? "" : from.strip();
        String typedTo = to == null ? "" : to.strip();
        Optional<LocalDate> end = typedTo.isEmpty() ? Optional.of(last) : day(typedTo);
        Optional<LocalDate> begin = typedFrom.isEmpty()
                ? end.map(day -> day.minusMonths(USUAL_MONTHS).plusDays(1))
                : day(typedFrom);
        Optional<String> wrongTo = wrongTo(end, last);
        Optional<String> wrongFrom =
                wrongTo.isPresent() && typedFrom.isEmpty() ? Optional.empty() : wrongFrom(begin, end.orElse(last));
        if (wrongFrom.isPresent() || wrongTo.isPresent()) {
            return new AskedPeriod(typedFrom, typedTo, wrongFrom, wrongTo, usual(last));
        }
        Period period = new Period(begin.orElseThrow(), end.orElseThrow());
        return new AskedPeriod(
                period.from().toString(), period.to().toString(), Optional.empty(), Optional.empty(), period);
    }

    private static Period usual(LocalDate last) {
        return new Period(last.minusMonths(USUAL_MONTHS).plusDays(1), last);
    }

    private static Optional<String> wrongTo(Optional<LocalDate> end, LocalDate last) {
        if (end.isEmpty()) {
            return Optional.of("period.day");
        }
        return end.get().isAfter(last) ? Optional.of("period.future") : Optional.empty();
    }

    private static Optional<String> wrongFrom(Optional<LocalDate> begin, LocalDate end) {
        if (begin.isEmpty()) {
            return Optional.of("period.day");
        }
        if (begin.get().isAfter(end)) {
            return Optional.of("period.order");
        }
        return begin.get().isAfter(end.minusYears(MOST_YEARS)) ? Optional.empty() : Optional.of("period.long");
    }

    private static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed))
                    .filter(day -> day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR);
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }
}
