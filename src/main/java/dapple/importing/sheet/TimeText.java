package dapple.importing.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A time of day as people write it: 14:30, 14.30, 14h30, 2:30 pm, 2 pm. */
record TimeText(LocalTime time, Optional<ZoneOffset> offset) {
    private static final Pattern TIME = Pattern.compile(
            "([0-9]{1,2})(?:[:.h]([0-9]{2}))?(?::([0-9]{2})(?:\\.[0-9]{1,9})?)?\\s*([ap]\\.?m\\.?|uhr|h)?\\s*(z|[+-][0-9]{2}:?[0-9]{2})?");
    private static final int LONGEST = 40;
    private static final int NOON = 12;

    static TimeText read(String cell) {
        Matcher found = TIME.matcher(cell.toLowerCase(Locale.ROOT));
        if (cell.length() > LONGEST || !found.matches() || (found.group(2) == null && found.group(4) == null)) {
            throw new BadCellException(Reason.NOT_A_TIME, cell.substring(0, Math.min(LONGEST, cell.length())));
        }
        try {
            int hour = hour(Integer.parseInt(found.group(1)), text(found, 4));
            return new TimeText(LocalTime.of(hour, number(found, 2), number(found, 3)), offset(text(found, 5)));
        } catch (DateTimeException impossible) {
            throw new BadCellException(Reason.NOT_A_TIME, cell);
        }
    }

    DayTime on(LocalDate day) {
        return new DayTime(day, Optional.of(time), offset);
    }

    private static int hour(int written, String half) {
        boolean isHalf = half.startsWith("a") || half.startsWith("p");
        if (!isHalf) {
            return written;
        }
        if (written < 1 || written > NOON) {
            throw new DateTimeException("no such hour");
        }
        return written % NOON + (half.startsWith("p") ? NOON : 0);
    }

    private static Optional<ZoneOffset> offset(String written) {
        return written.isEmpty() ? Optional.empty() : Optional.of(ZoneOffset.of(written.toUpperCase(Locale.ROOT)));
    }

    private static int number(Matcher found, int group) {
        return found.group(group) == null ? 0 : Integer.parseInt(found.group(group));
    }

    private static String text(Matcher found, int group) {
        return found.group(group) == null ? "" : found.group(group);
    }
}
