package dapple.rig;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.BitSet;
import java.util.List;

/** The minutes of a day by the clock in which any of several lamps is lit; what burns past midnight counts at its beginning. */
public final class LitDay {
    private static final int MINUTES_OF_A_DAY = 24 * 60;
    private static final double MINUTES_PER_HOUR = 60;

    private final BitSet lit;

    private LitDay(BitSet lit) {
        this.lit = lit;
    }

    public static LitDay of(List<LampTimer> timers, LocalDate day) {
        BitSet lit = new BitSet(MINUTES_OF_A_DAY);
        timers.stream().flatMap(timer -> timer.timesOf(day).stream()).forEach(times -> light(lit, times));
        return new LitDay(lit);
    }

    private static void light(BitSet lit, DailyTimer times) {
        int on = minute(times.on());
        int off = minute(times.off());
        if (on < off) {
            lit.set(on, off);
        } else {
            lit.set(on, MINUTES_OF_A_DAY);
            lit.set(0, off);
        }
    }

    private static int minute(LocalTime time) {
        return DailyTimer.minutes(time);
    }

    public double hours() {
        return lit.cardinality() / MINUTES_PER_HOUR;
    }

    /** How long this is lit while another is not, min. */
    public int minutesOutside(LitDay other) {
        BitSet outside = (BitSet) lit.clone();
        outside.andNot(other.lit);
        return outside.cardinality();
    }
}
