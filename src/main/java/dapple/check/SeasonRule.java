package dapple.check;

import dapple.lamp.LampClass;
import dapple.prediction.SpeciesNeed;
import dapple.rig.FittingFacts;
import dapple.rig.LampTimer;
import dapple.rig.LitDay;
import dapple.target.LightHours;
import dapple.target.Photoperiod;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether the timers give as long a day as the targets ask for at this time of the year. */
final class SeasonRule {
    /** How far the day may be off, h. */
    static final double MOST_OFF_HOURS = Photoperiod.MOST_OFF_HOURS;

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

    /** How long any of the lamps burns that day. */
    private double litHours(List<FittingFacts> lamps) {
        List<LampTimer> timers = lamps.stream()
                .flatMap(fitting -> fitting.hanging().timer().stream())
                .toList();
        return LitDay.of(timers, seen.known().day()).hours();
    }
}
