package dapple.rig;

import dapple.light.quantity.Check;
import dapple.light.sun.HomeDays;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * A timer that follows the day of the latitude that a species is from, to the minute; as long before the middle of the lit
 * day as after it.
 *
 * @param latitudeDegrees of its home, −90 to 90, north positive
 * @param isShifted whether its year is shifted by half a year, so that winter there falls into winter here: the days are those
 *     of the opposite latitude
 * @param middle of the lit day, by the clock of the site, summer and winter alike
 * @param plusMinutes how much earlier than the day's begin it switches on and later than its end off, −180 to 180 min: more than
 *     0 for background light, 0 or less for basking lamps
 * @param shortestMinutes no day is taken to be shorter, 0 to 1440 min, before the plus
 * @param longestMinutes no day is taken to be longer, likewise
 */
public record HomeDayTimer(
        double latitudeDegrees,
        boolean isShifted,
        LocalTime middle,
        int plusMinutes,
        int shortestMinutes,
        int longestMinutes)
        implements LampTimer {
    static final int MOST_PLUS_MINUTES = 180;

    private static final int MINUTES_OF_A_DAY = 1440;
    private static final double MINUTES_PER_HOUR = 60;

    public HomeDayTimer {
        Check.within("latitude", latitudeDegrees, -90, 90, "°");
        Check.within("plus", plusMinutes, -MOST_PLUS_MINUTES, MOST_PLUS_MINUTES, "min");
        Check.within("shortest day", shortestMinutes, 0, MINUTES_OF_A_DAY, "min");
        Check.within("longest day", longestMinutes, shortestMinutes, MINUTES_OF_A_DAY, "min");
    }

    @Override
    public Optional<DailyTimer> timesOf(LocalDate day) {
        int lit = homeMinutes(day) + 2 * plusMinutes;
        if (lit <= 0) {
            return Optional.empty();
        }
        if (lit >= MINUTES_OF_A_DAY) {
            return Optional.of(new DailyTimer(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT));
        }
        LocalTime on = middle.minusMinutes(lit / 2);
        return Optional.of(new DailyTimer(on, on.plusMinutes(lit)));
    }

    private int homeMinutes(LocalDate day) {
        HomeDays home = new HomeDays(isShifted ? -latitudeDegrees : latitudeDegrees);
        int minutes = (int) Math.round(MINUTES_PER_HOUR * home.on(day).hours());
        return Math.max(shortestMinutes, Math.min(longestMinutes, minutes));
    }
}
