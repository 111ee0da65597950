package dapple.check;

import dapple.lamp.DimmedTungsten;
import dapple.lamp.LampClass;
import dapple.light.quantity.Quantity;
import dapple.light.spectrum.SpectralBand;
import dapple.rig.Ballast;
import dapple.rig.FittingFacts;
import dapple.rig.LampControl;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** What feeds lamps: ballasts, dimmers, thermostats. */
final class GearRules {
    private static final Set<LampClass> INCANDESCENT =
            EnumSet.of(LampClass.TUNGSTEN_HALOGEN, LampClass.CARBON_FILAMENT);

    /** Leaves half the light: 0.5^(1/3.4), by the handbook's exponent, from memory. */
    private static final double HALF_THE_LIGHT = Math.pow(0.5, 1 / 3.4);

    private GearRules() {}

    static Checked ballast(Case seen) {
        List<FittingFacts> missing = those(seen.fittings(any -> true), fitting -> has(fitting, Ballast.MISSING));
        List<FittingFacts> needing = seen.fittings(LampClass::needsBallast);
        List<FittingFacts> denied = those(needing, fitting -> has(fitting, Ballast.NOT_NEEDED));
        List<FittingFacts> unknown =
                those(needing, fitting -> fitting.hanging().gear().ballast().isEmpty());
        if (!missing.isEmpty()) {
            return Checked.fails(TradeCheck.BALLAST, "missing", Case.tags(missing))
                    .by(missing.size());
        }
        if (!denied.isEmpty()) {
            return Checked.unknown(TradeCheck.BALLAST, "denied", Case.tags(denied));
        }
        if (!unknown.isEmpty()) {
            return Checked.unknown(TradeCheck.BALLAST, "not-on-record", Case.tags(unknown));
        }
        return needing.isEmpty()
                ? Checked.holds(TradeCheck.BALLAST, "no-lamp")
                : Checked.holds(TradeCheck.BALLAST, "there", Case.tags(needing)).by(0);
    }

    private static boolean has(FittingFacts fitting, Ballast ballast) {
        return fitting.hanging().gear().ballast().filter(ballast::equals).isPresent();
    }

    static Checked dimmer(Case seen) {
        List<FittingFacts> lamps = seen.fittings(INCANDESCENT::contains);
        List<FittingFacts> dimmed = those(lamps, fitting -> is(fitting, LampControl.DIMMED));
        List<FittingFacts> switched = those(lamps, fitting -> is(fitting, LampControl.THERMOSTAT));
        List<FittingFacts> unknown =
                those(lamps, fitting -> fitting.hanging().gear().control().isEmpty());
        if (lamps.isEmpty()) {
            return Checked.holds(TradeCheck.DIMMER, "no-lamp");
        }
        if (!dimmed.isEmpty()) {
            return dimmed(seen, dimmed);
        }
        if (!switched.isEmpty()) {
            return Checked.fails(TradeCheck.DIMMER, "thermostat", Case.tags(switched));
        }
        return unknown.isEmpty()
                ? Checked.holds(TradeCheck.DIMMER, "switched", Case.tags(lamps)).by(1)
                : halved(seen, unknown);
    }

    private static boolean is(FittingFacts fitting, LampControl control) {
        return fitting.hanging().gear().control().filter(control::equals).isPresent();
    }

    /** Of the one that has least of its voltage left; what becomes of carbon is not known. */
    private static Checked dimmed(Case seen, List<FittingFacts> dimmed) {
        Optional<Double> least = dimmed.stream()
                .filter(fitting -> fitting.lamp().model().lampClass() == LampClass.TUNGSTEN_HALOGEN)
                .flatMap(fitting -> fitting.hanging().gear().voltageRatio().stream())
                .min(Comparator.naturalOrder());
        if (least.isEmpty()) {
            return Checked.fails(TradeCheck.DIMMER, "dimmed-somehow", Case.tags(dimmed));
        }
        DimmedTungsten left = new DimmedTungsten(least.get());
        return Checked.fails(
                        TradeCheck.DIMMER,
                        "dimmed",
                        Case.tags(dimmed),
                        seen.formats().percent(least.get()),
                        seen.formats().percent(left.left(Quantity.ILLUMINANCE)),
                        seen.formats().percent(left.power()),
                        seen.formats().percent(DimmedTungsten.ratedShare(SpectralBand.IR_A)),
                        seen.formats().percent(left.share(SpectralBand.IR_A)),
                        seen.formats().percent(DimmedTungsten.ratedShare(SpectralBand.IR_B)),
                        seen.formats().percent(left.share(SpectralBand.IR_B)))
                .by(left.power());
    }

    /** What a dimmer would do is told. */
    private static Checked halved(Case seen, List<FittingFacts> unknown) {
        DimmedTungsten half = new DimmedTungsten(HALF_THE_LIGHT);
        return Checked.unknown(
                        TradeCheck.DIMMER,
                        "not-on-record",
                        Case.tags(unknown),
                        seen.formats().percent(half.power()),
                        seen.formats().percent(half.temperature()))
                .by(half.power());
    }

    private static List<FittingFacts> those(List<FittingFacts> fittings, Predicate<FittingFacts> wanted) {
        return fittings.stream().filter(wanted).toList();
    }
}
