package dapple.target;

import dapple.light.quantity.Check;
import dapple.site.SourceMark;
import java.util.List;

/**
 * Hours of light a day, by month, with where they come from.
 *
 * @param hours twelve, January first, each 0 to 24 h
 */
public record Photoperiod(List<Double> hours, SourceMark mark, String source) {
    public static final int MONTHS = 12;

    /** How far a day may be off, h: the usual step of a week; common practice, no source. */
    public static final double MOST_OFF_HOURS = 0.5;

    public Photoperiod {
        if (hours.size() != MONTHS) {
            throw new IllegalArgumentException("a photoperiod must have 12 months, had " + hours.size());
        }
        hours.forEach(hour -> Check.within("hours of light", hour, 0, 24, "h"));
        hours = List.copyOf(hours);
    }
}
