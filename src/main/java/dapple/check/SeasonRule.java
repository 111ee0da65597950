package dapple.check;

import dapple.lamp.LampClass;
import dapple.prediction.SpeciesNeed;
import dapple.rig.DailyTimer;
import dapple.rig.FittingFacts;
import dapple.target.LightHours;
import java.time.LocalTime;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether the timers give as long a day as the targets ask for at this time of the year. */
final class SeasonRule {
    /** How far the day may be off, h: the usual step of a week; common practice, no source. */
    static final double MOST_OFF_HOURS = 0.5;

    private static final int MINUTES_OF_A_DAY = 24 * 60;
    private static final double MINUTES_PER_HOUR = 60;

    private final Case seen;

    private SeasonRule(Case seen) {
        this.seen = seen;
    }

    static Checked of(Case seen) {
        return new SeasonRule(seen).checked();
    }

    private Checked checked() {
        List<FittingFacts> lamps = seen.fittings(LampClass::givesLight);
        List<FittingFacts> untimed = lamps.stream()
                .filter(fitting -> fitting.hanging().timer().isEmpty())
                .toList();
        if (lamps.isEmpty()) {
            return Checked.unknown(TradeCheck.SEASON, "no-lamp");
        }
        if (!untimed.isEmpty()) {
            return Checked.unknown(TradeCheck.SEASON, "no-timer", Case.tags(untimed));
        }
        double lit = litHours(lamps);
        Optional<SpeciesNeed> worst = seen.scene().needs().stream()
                .filter(need -> need.light().isPresent())
                .max(Comparator.comparingDouble(need -> off(need, lit)));
        return worst.map(need -> checked(need, lit))
                .orElseGet(() -> Checked.unknown(TradeCheck.SEASON, "no-photoperiod", hours(lit)));
    }

    private static double off(SpeciesNeed need, double lit) {
        return need.light().map(wanted -> Math.abs(lit - wanted.hours())).orElse(0.0);
    }

    private Checked checked(SpeciesNeed need, double lit) {
        LightHours wanted = need.light().orElseThrow();
        String[] words = {hours(lit), hours(wanted.hours()), need.scientificName()};
        Checked said = off(need, lit) <= MOST_OFF_HOURS
                ? Checked.holds(TradeCheck.SEASON, "right", words)
                : Checked.fails(TradeCheck.SEASON, lit > wanted.hours() ? "long" : "short", words);
        return said.by(lit - wanted.hours());
    }

    private static String hours(double hours) {
        return String.format(Locale.ROOT, "%.1f\u00a0h", hours);
    }

    /** How long any of the lamps burns. */
    private static double litHours(List<FittingFacts> lamps) {
        BitSet lit = new BitSet(MINUTES_OF_A_DAY);
        lamps.stream().flatMap(fitting -> fitting.hanging().timer().stream()).forEach(timer -> light(lit, timer));
        return lit.cardinality() / MINUTES_PER_HOUR;
    }

    private static void light(BitSet lit, DailyTimer timer) {
        int on = minute(timer.on());
        int off = minute(timer.off());
        if (on < off) {
            lit.set(on, off);
        } else {
            lit.set(on, MINUTES_OF_A_DAY);
            lit.set(0, off);
        }
    }

    private static int minute(LocalTime time) {
        return time.getHour() * 60 + time.getMinute();
    }
}
