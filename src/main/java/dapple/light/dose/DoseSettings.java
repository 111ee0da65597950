package dapple.light.dose;

import dapple.light.quantity.Check;
import java.time.Duration;

/**
 * What a dose rests on besides readings.
 *
 * @param carryDays how many days of the calendar two readings may lie apart to tell of the days between, 0 to 366
 * @param basking how long an animal is assumed to be at the basking place, a day, 0 to 24 h
 */
public record DoseSettings(int carryDays, Duration basking) {
    /** 14 days, common practice, no source; 3 hours, assumed. */
    public static final DoseSettings USUAL = new DoseSettings(14, Duration.ofHours(3));

    private static final int LONGEST_CARRY_DAYS = 366;
    private static final int HOURS_OF_A_DAY = 24;

    public DoseSettings {
        Check.within("days to carry a reading over", carryDays, 0, LONGEST_CARRY_DAYS, "d");
        if (basking.isNegative() || basking.compareTo(Duration.ofHours(HOURS_OF_A_DAY)) > 0) {
            throw new IllegalArgumentException("basking time must be 0 to 24 h, was " + basking);
        }
    }
}
