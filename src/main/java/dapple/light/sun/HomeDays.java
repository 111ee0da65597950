package dapple.light.sun;

import dapple.light.quantity.Check;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The days of the latitude that a species is from, as a proposal for how long its lamps are on. What an animal can use of
 * dawn and dusk, and what woods and mountains hide, is not in it.
 *
 * @param latitudeDegrees −90 to 90, north positive; the opposite has the same days half a year later
 */
public record HomeDays(double latitudeDegrees) {
    private static final int MONTHS = 12;

    public HomeDays {
        Check.within("latitude", latitudeDegrees, -90, 90, "°");
    }

    public Daylight on(LocalDate day) {
        return Daylight.on(day, latitudeDegrees);
    }

    /** Mean hours of daylight a day, January first. */
    public List<Double> hoursByMonth(Year year) {
        return IntStream.rangeClosed(1, MONTHS)
                .mapToObj(month -> mean(year.atMonth(month)))
                .toList();
    }

    private double mean(YearMonth month) {
        return IntStream.rangeClosed(1, month.lengthOfMonth())
                .mapToDouble(day -> on(month.atDay(day)).hours())
                .average()
                .orElseThrow();
    }
}
