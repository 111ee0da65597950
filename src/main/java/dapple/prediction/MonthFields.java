package dapple.prediction;

import dapple.rig.DailyTimer;
import dapple.rig.MonthlyTimer;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The times of twelve months as they are typed. A month that is left empty takes those of the month before.
 *
 * @param dark the numbers of months in which the lamp stays off
 */
record MonthFields(List<String> on, List<String> off, List<String> dark) {
    static final MonthFields NONE = new MonthFields(List.of(), List.of(), List.of());

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);

    MonthFields {
        on = List.copyOf(on);
        off = List.copyOf(off);
        dark = List.copyOf(dark);
    }

    static MonthFields of(MonthlyTimer timer) {
        return new MonthFields(
                timer.months().stream()
                        .map(times -> times.map(DailyTimer::on)
                                .map(LocalTime::toString)
                                .orElse(""))
                        .toList(),
                timer.months().stream()
                        .map(times -> times.map(DailyTimer::off)
                                .map(LocalTime::toString)
                                .orElse(""))
                        .toList(),
                IntStream.rangeClosed(1, MonthlyTimer.MONTHS)
                        .filter(month -> timer.months().get(month - 1).isEmpty())
                        .mapToObj(String::valueOf)
                        .toList());
    }

    /** One month of the form. */
    record Row(int month, String on, String off, boolean isDark, boolean isWrong) {}

    /** What is typed for a month. */
    sealed interface Month {
        record Times(DailyTimer times) implements Month {}

        record Dark() implements Month {}

        record Empty() implements Month {}

        record Wrong() implements Month {}
    }

    /** As they were typed; which of them are wrong is said only of what was sent. */
    List<Row> rows(boolean wasSent) {
        return IntStream.rangeClosed(1, MonthlyTimer.MONTHS)
                .mapToObj(month ->
                        new Row(month, text(on, month), text(off, month), isDark(month), wasSent && isWrong(month)))
                .toList();
    }

    /** The months that must be looked at again. */
    List<Integer> wrong() {
        return IntStream.rangeClosed(1, MonthlyTimer.MONTHS)
                .filter(this::isWrong)
                .boxed()
                .toList();
    }

    /** January has none before it. */
    private boolean isWrong(int month) {
        return read(month) instanceof Month.Wrong || (month == 1 && read(month) instanceof Month.Empty);
    }

    /** Of months of which none is wrong. */
    MonthlyTimer timer() {
        List<Optional<DailyTimer>> months = new ArrayList<>();
        Optional<DailyTimer> before = Optional.empty();
        for (int month = 1; month <= MonthlyTimer.MONTHS; month++) {
            Month read = read(month);
            if (read instanceof Month.Times typed) {
                before = Optional.of(typed.times());
            } else if (read instanceof Month.Dark) {
                before = Optional.empty();
            }
            months.add(before);
        }
        return new MonthlyTimer(months);
    }

    private Month read(int month) {
        String onAt = text(on, month);
        String offAt = text(off, month);
        if (isDark(month)) {
            return new Month.Dark();
        }
        if (onAt.isEmpty() && offAt.isEmpty()) {
            return new Month.Empty();
        }
        return time(onAt)
                .flatMap(begin -> time(offAt).<Month>map(end -> new Month.Times(new DailyTimer(begin, end))))
                .orElseGet(Month.Wrong::new);
    }

    private static Optional<LocalTime> time(String text) {
        try {
            return Optional.of(LocalTime.parse(text, CLOCK));
        } catch (DateTimeException notATime) {
            return Optional.empty();
        }
    }

    private boolean isDark(int month) {
        return dark.contains(String.valueOf(month));
    }

    private static String text(List<String> texts, int month) {
        return month <= texts.size() ? texts.get(month - 1).strip() : "";
    }
}
