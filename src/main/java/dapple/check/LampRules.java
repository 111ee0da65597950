package dapple.check;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.SpectrumEvidence;
import dapple.rig.FittingFacts;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What the lamps themselves say, wherever they hang. */
final class LampRules {
    /** Lamps whose ultraviolet has been seen to fall below the target within months. */
    private static final Set<LampClass> SHORT_LIVED = EnumSet.of(LampClass.METAL_HALIDE, LampClass.MERCURY_VAPOUR);

    private static final Set<LampClass> INCANDESCENT =
            EnumSet.of(LampClass.TUNGSTEN_HALOGEN, LampClass.CARBON_FILAMENT);

    /** Light of a tungsten filament ∝ voltage^3.4, its power ∝ voltage^1.6: handbook values, from memory. */
    private static final double LIGHT_EXPONENT = 3.4;

    private static final double POWER_EXPONENT = 1.6;

    /** Temperature of a filament ∝ voltage^0.42: handbook value, from memory. */
    private static final double TEMPERATURE_EXPONENT = 0.42;

    private static final double HALF = 0.5;

    private LampRules() {}

    static Checked spectrum(Case seen) {
        List<FittingFacts> lamps = seen.fittings(LampClass::emitsUltraviolet);
        List<FittingFacts> faulty = those(lamps, lamp -> lamp.model().hasShortWaves());
        List<FittingFacts> without = those(lamps, lamp -> lamp.model().lacksSpectrum());
        List<FittingFacts> waived = those(lamps, lamp -> lamp.model().evidence() instanceof SpectrumEvidence.Waived);
        if (lamps.isEmpty()) {
            return Checked.holds(TradeCheck.SPECTRUM, "no-lamp");
        }
        if (!faulty.isEmpty()) {
            return Checked.fails(TradeCheck.SPECTRUM, "short-waves", Case.tags(faulty))
                    .by(faulty.size());
        }
        if (!without.isEmpty()) {
            return Checked.fails(TradeCheck.SPECTRUM, "missing", Case.tags(without))
                    .by(without.size());
        }
        return waived.isEmpty()
                ? Checked.holds(TradeCheck.SPECTRUM, "filed", Case.tags(lamps)).by(0)
                : Checked.holds(TradeCheck.SPECTRUM, "waived", Case.tags(waived), signers(waived))
                        .by(0);
    }

    private static List<FittingFacts> those(List<FittingFacts> fittings, Predicate<LampFacts> wanted) {
        return fittings.stream().filter(fitting -> wanted.test(fitting.lamp())).toList();
    }

    private static String signers(List<FittingFacts> waived) {
        return waived.stream()
                .map(fitting -> fitting.lamp().model().evidence())
                .map(evidence -> ((SpectrumEvidence.Waived) evidence).by())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    static Checked lasting(Case seen) {
        List<FittingFacts> lamps = seen.fittings(LampClass::emitsUltraviolet);
        List<FittingFacts> others = seen.fittings(kind -> kind.emitsUltraviolet() && !SHORT_LIVED.contains(kind));
        if (lamps.isEmpty()) {
            return Checked.holds(TradeCheck.LASTING, "no-lamp");
        }
        Checked found = others.isEmpty()
                ? Checked.fails(TradeCheck.LASTING, "alone", Case.tags(lamps))
                : Checked.holds(TradeCheck.LASTING, "beside", Case.tags(others));
        return found.by(others.size());
    }

    static Checked ballast(Case seen) {
        List<FittingFacts> lamps = seen.fittings(LampClass::needsBallast);
        return lamps.isEmpty()
                ? Checked.holds(TradeCheck.BALLAST, "no-lamp")
                : Checked.unknown(TradeCheck.BALLAST, "not-on-record", Case.tags(lamps));
    }

    /** Whether a lamp is dimmed is not on record; what a dimmer would do is told. */
    static Checked dimmer(Case seen) {
        List<FittingFacts> lamps = seen.fittings(INCANDESCENT::contains);
        if (lamps.isEmpty()) {
            return Checked.holds(TradeCheck.DIMMER, "no-lamp");
        }
        String power = seen.formats().percent(left(POWER_EXPONENT));
        String temperature = seen.formats().percent(left(TEMPERATURE_EXPONENT));
        return Checked.unknown(TradeCheck.DIMMER, "not-on-record", Case.tags(lamps), power, temperature)
                .by(left(POWER_EXPONENT));
    }

    /** What is left of something at half the light. */
    private static double left(double exponent) {
        return Math.pow(HALF, exponent / LIGHT_EXPONENT);
    }
}
