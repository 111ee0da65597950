package dapple.importing.sheet;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Days as people write them: 2025-11-13, 13.11.2025, 13/11/2025, 11/13/2025, 13 Nov 2025, each with or without a time. */
final class DayText {
    private static final String REST = "(?:[T,]?\\s*(.*))?";
    private static final Pattern YEAR_FIRST =
            Pattern.compile("([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})(?![0-9])" + REST);
    private static final Pattern YEAR_LAST =
            Pattern.compile("([0-9]{1,2})([-/.])\\s?([0-9]{1,2})[-/.]\\s?([0-9]{4}|[0-9]{2})(?![0-9])" + REST);
    private static final Pattern NAMED = Pattern.compile(
            "([0-9]{1,2})\\.?[\\s-]+(?:de\\s)?(\\p{L}{3,10})\\.?,?[\\s-]+(?:de\\s)?([0-9]{4})(?![0-9])" + REST);
    private static final Pattern NAME_FIRST =
            Pattern.compile("(\\p{L}{3,10})\\.?\\s+([0-9]{1,2}),?\\s+([0-9]{4})(?![0-9])" + REST);
    private static final int LONGEST = 50;
    private static final int MONTHS = 12;
    private static final int CENTURY = 100;
    private static final int THIS_CENTURY = 2000;

    private DayText() {}

    /** What a cell shows of the order in which the days of its column are written. */
    static DayOrder evidence(String cell) {
        if (cell.isEmpty() || cell.length() > LONGEST || !mayNeedOrder(cell)) {
            return DayOrder.NOT_ASKED;
        }
        Matcher last = YEAR_LAST.matcher(cell);
        if (!last.matches() || last.group(2).equals(".")) {
            return DayOrder.NOT_ASKED;
        }
        int first = Integer.parseInt(last.group(1));
        int second = Integer.parseInt(last.group(3));
        if (first > MONTHS && second <= MONTHS) {
            return DayOrder.DAY_FIRST;
        }
        if (second > MONTHS && first <= MONTHS) {
            return DayOrder.MONTH_FIRST;
        }
        return first == second ? DayOrder.NOT_ASKED : DayOrder.UNDECIDED;
    }

    /** Whether a stroke stands behind the first digit or two; only such days are asked about, and most cells are none. */
    private static boolean mayNeedOrder(String cell) {
        int second = cell.length() > 1 ? cell.charAt(1) : ' ';
        int third = cell.length() > 2 ? cell.charAt(2) : ' ';
        return Character.isDigit(cell.charAt(0))
                && (second == '/' || second == '-' || (Character.isDigit(second) && (third == '/' || third == '-')));
    }

    /** Whether a cell is a day in whatever order. */
    static boolean isDay(String cell) {
        return isDay(cell, DayOrder.DAY_FIRST) || isDay(cell, DayOrder.MONTH_FIRST);
    }

    private static boolean isDay(String cell, DayOrder order) {
        try {
            read(cell, order);
            return true;
        } catch (BadCellException other) {
            return false;
        }
    }

    /** @throws BadCellException if it is no day, or could be two */
    static DayTime read(String cell, DayOrder order) {
        if (cell.length() > LONGEST) {
            throw new BadCellException(Reason.NOT_A_DAY, cell.substring(0, LONGEST));
        }
        return numbers(cell, order)
                .or(() -> named(cell))
                .orElseThrow(() -> new BadCellException(Reason.NOT_A_DAY, cell));
    }

    private static Optional<DayTime> numbers(String cell, DayOrder order) {
        Matcher first = YEAR_FIRST.matcher(cell);
        if (first.matches()) {
            return Optional.of(
                    with(first.group(4), DayTime.day(number(first, 1), number(first, 2), number(first, 3), cell)));
        }
        Matcher last = YEAR_LAST.matcher(cell);
        if (!last.matches()) {
            return Optional.empty();
        }
        boolean isDayFirst = last.group(2).equals(".") || isDayFirst(cell, order, number(last, 1), number(last, 3));
        int day = number(last, isDayFirst ? 1 : 3);
        int month = number(last, isDayFirst ? 3 : 1);
        return Optional.of(with(last.group(5), DayTime.day(year(last.group(4)), month, day, cell)));
    }

    private static boolean isDayFirst(String cell, DayOrder order, int first, int second) {
        if (first > MONTHS || second > MONTHS || first == second) {
            return first > MONTHS || second <= MONTHS;
        }
        if (!order.isDecided()) {
            throw new BadCellException(Reason.DAY_AMBIGUOUS, cell);
        }
        return order == DayOrder.DAY_FIRST;
    }

    private static Optional<DayTime> named(String cell) {
        Matcher found = NAMED.matcher(cell);
        if (found.matches()) {
            return MonthName.number(found.group(2))
                    .map(month -> with(found.group(4), DayTime.day(number(found, 3), month, number(found, 1), cell)));
        }
        Matcher first = NAME_FIRST.matcher(cell);
        return first.matches()
                ? MonthName.number(first.group(1))
                        .map(month ->
                                with(first.group(4), DayTime.day(number(first, 3), month, number(first, 2), cell)))
                : Optional.empty();
    }

    private static DayTime with(@Nullable String time, LocalDate day) {
        String rest = time == null ? "" : Cells.plain(time);
        return rest.isEmpty() ? new DayTime(day) : TimeText.read(rest).on(day);
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }

    private static int year(String digits) {
        int year = Integer.parseInt(digits);
        return year < CENTURY ? THIS_CENTURY + year : year;
    }
}
