package dapple.rig;

import dapple.site.LatitudeText;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Says in words when timers switch lamps. */
@Component
public class TimerWords {
    private static final double MINUTES_PER_HOUR = 60;
    private static final int SOME_YEAR = 2025;
    private static final int DAYS_OF_IT = 365;

    private final MessageSource messages;

    TimerWords(MessageSource messages) {
        this.messages = messages;
    }

    public String of(Optional<LampTimer> timer) {
        return timer.map(this::of).orElseGet(() -> say("rig.timer.unknown"));
    }

    /** The same, of a timer that changes over the year also its times on one day. */
    public String of(Optional<LampTimer> timer, Instant at, ZoneId zone) {
        LocalDate day = LocalDate.ofInstant(at, zone);
        return of(timer)
                + timer.filter(known -> !(known instanceof DailyTimer))
                        .map(known -> say("timer.today", times(known.timesOf(day))))
                        .orElse("");
    }

    public String of(LampTimer timer) {
        if (timer instanceof DailyTimer daily) {
            return times(daily);
        }
        if (timer instanceof MonthlyTimer monthly) {
            return say("timer.monthly", span(months(monthly)));
        }
        HomeDayTimer home = (HomeDayTimer) timer;
        String where = LatitudeText.of(home.latitudeDegrees()) + (home.isShifted() ? say("timer.shifted") : "");
        return say("timer.home", where, span(days(home)));
    }

    /** On and off at; off all day; day and night. */
    public String times(Optional<DailyTimer> times) {
        return times.map(this::times).orElseGet(() -> say("timer.off"));
    }

    private String times(DailyTimer times) {
        return times.isAlwaysOn()
                ? say("rig.timer.always")
                : say("rig.timer.times", times.on().toString(), times.off().toString());
    }

    public String month(int number) {
        return Month.of(number).getDisplayName(TextStyle.FULL, Locale.UK);
    }

    /** Hours without their unit. */
    public String hours(double hours) {
        return String.format(Locale.ROOT, "%.1f", hours);
    }

    private static List<Optional<DailyTimer>> months(MonthlyTimer monthly) {
        return monthly.months();
    }

    private static List<Optional<DailyTimer>> days(HomeDayTimer home) {
        return IntStream.rangeClosed(1, DAYS_OF_IT)
                .mapToObj(day -> home.timesOf(LocalDate.ofYearDay(SOME_YEAR, day)))
                .toList();
    }

    private String span(List<Optional<DailyTimer>> all) {
        IntSummaryStatistics lit = all.stream()
                .mapToInt(times -> times.map(DailyTimer::litMinutes).orElse(0))
                .summaryStatistics();
        return say("timer.hours", hours(lit.getMin() / MINUTES_PER_HOUR), hours(lit.getMax() / MINUTES_PER_HOUR));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }
}
