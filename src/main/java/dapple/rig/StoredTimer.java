package dapple.rig;

import dapple.site.Given;
import jakarta.persistence.Embeddable;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The columns of a fitting's timer: those that its kind does not have are empty.
 *
 * @param monthTimes twelve times such as 08:00-18:00, January first, off for none
 */
@Embeddable
record StoredTimer(
        @Nullable Integer onMinute,
        @Nullable Integer offMinute,
        @Nullable String monthTimes,
        @Nullable Double homeLatitudeDegrees,
        @Nullable Boolean homeShifted,
        @Nullable Integer homeMiddleMinute,
        @Nullable Integer homePlusMinutes,
        @Nullable Integer homeShortestMinutes,
        @Nullable Integer homeLongestMinutes) {
    private static final String OFF = "off";

    static StoredTimer of(LampTimer timer) {
        if (timer instanceof DailyTimer daily) {
            int on = DailyTimer.minutes(daily.on());
            return new StoredTimer(on, DailyTimer.minutes(daily.off()), null, null, null, null, null, null, null);
        }
        if (timer instanceof MonthlyTimer monthly) {
            return new StoredTimer(null, null, text(monthly), null, null, null, null, null, null);
        }
        HomeDayTimer home = (HomeDayTimer) timer;
        return new StoredTimer(
                null,
                null,
                null,
                home.latitudeDegrees(),
                home.isShifted(),
                DailyTimer.minutes(home.middle()),
                home.plusMinutes(),
                home.shortestMinutes(),
                home.longestMinutes());
    }

    private static String text(MonthlyTimer timer) {
        return timer.months().stream()
                .map(month -> month.map(times -> times.on() + "-" + times.off()).orElse(OFF))
                .collect(Collectors.joining(" "));
    }

    /** Empty: it is not known. */
    Optional<LampTimer> timer() {
        if (onMinute != null && offMinute != null) {
            return Optional.of(DailyTimer.ofMinutes(onMinute, offMinute));
        }
        if (monthTimes != null) {
            return Optional.of(new MonthlyTimer(Arrays.stream(monthTimes.split(" ", -1))
                    .map(StoredTimer::month)
                    .toList()));
        }
        return homeLatitudeDegrees == null ? Optional.empty() : Optional.of(homeDay(homeLatitudeDegrees));
    }

    private static Optional<DailyTimer> month(String text) {
        if (text.equals(OFF)) {
            return Optional.empty();
        }
        String[] times = text.split("-", -1);
        return Optional.of(new DailyTimer(LocalTime.parse(times[0]), LocalTime.parse(times[1])));
    }

    private HomeDayTimer homeDay(double latitudeDegrees) {
        return new HomeDayTimer(
                latitudeDegrees,
                Given.of(homeShifted),
                DailyTimer.ofMinutes(Given.of(homeMiddleMinute), 0).on(),
                Given.of(homePlusMinutes),
                Given.of(homeShortestMinutes),
                Given.of(homeLongestMinutes));
    }
}
