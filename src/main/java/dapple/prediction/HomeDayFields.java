package dapple.prediction;

import dapple.rig.HomeDayTimer;
import java.math.BigDecimal;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * A timer that follows a home day, as forms ask for it.
 *
 * @param plus minutes earlier on and later off; empty: none
 * @param shortest hours; empty: as short as it comes
 * @param longest hours; empty: as long as it comes
 */
record HomeDayFields(
        @Nullable BigDecimal latitude,
        boolean isShifted,
        @Nullable LocalTime middle,
        @Nullable BigDecimal plus,
        @Nullable BigDecimal shortest,
        @Nullable BigDecimal longest) {
    static final HomeDayFields NONE = new HomeDayFields(null, false, null, null, null, null);

    private static final double MINUTES_PER_HOUR = 60;
    private static final int MINUTES_OF_A_DAY = 1440;

    static HomeDayFields of(HomeDayTimer timer) {
        return new HomeDayFields(
                BigDecimal.valueOf(timer.latitudeDegrees()),
                timer.isShifted(),
                timer.middle(),
                BigDecimal.valueOf(timer.plusMinutes()),
                hours(timer.shortestMinutes()),
                hours(timer.longestMinutes()));
    }

    private static BigDecimal hours(int minutes) {
        return BigDecimal.valueOf(Math.round(100 * minutes / MINUTES_PER_HOUR), 2);
    }

    void check(Errors errors) {
        if (latitude == null && !errors.hasFieldErrors("homeLatitude")) {
            errors.rejectValue("homeLatitude", "timer.latitude.needed");
        }
        if (middle == null && !errors.hasFieldErrors("homeMiddle")) {
            errors.rejectValue("homeMiddle", "timer.middle.needed");
        }
        if (shortestMinutes() > longestMinutes()) {
            errors.rejectValue("homeLongest", "timer.longest.order");
        }
    }

    private int shortestMinutes() {
        return shortest == null ? 0 : minutes(shortest);
    }

    private int longestMinutes() {
        return longest == null ? MINUTES_OF_A_DAY : minutes(longest);
    }

    private static int minutes(BigDecimal hours) {
        return (int) Math.round(MINUTES_PER_HOUR * hours.doubleValue());
    }

    /** Of fields that have been checked. */
    HomeDayTimer timer(BigDecimal checkedLatitude, LocalTime checkedMiddle) {
        return new HomeDayTimer(
                checkedLatitude.doubleValue(),
                isShifted,
                checkedMiddle,
                plus == null ? 0 : plus.intValue(),
                shortestMinutes(),
                longestMinutes());
    }
}
