package dapple.desk;

import dapple.lamp.DimmedTungsten;
import dapple.lamp.LampClass;
import dapple.rig.FittingFacts;
import dapple.rig.Rig;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What the lamps of a rig take.
 *
 * @param watts of those of which it is known
 * @param unknown lamps of which it is not: their model does not say, or they are dimmed by nobody knows how much
 * @param reckoned dimmed lamps whose power follows from their voltage
 * @param dimmed those among the unknown that are dimmed and whose rated power is known
 * @param dimmedRatedWatts of these
 */
public record Power(double watts, long unknown, long reckoned, long dimmed, double dimmedRatedWatts) {
    static Power of(Rig rig) {
        List<FittingFacts> all = rig.fittings();
        List<FittingFacts> unreckoned = those(
                all, one -> isDimmed(one) && left(one).isEmpty() && rated(one).isPresent());
        return new Power(
                all.stream()
                        .flatMap(one -> watts(one).stream())
                        .mapToDouble(watts -> watts)
                        .sum(),
                those(all, one -> watts(one).isEmpty()).size(),
                those(all, one -> isDimmed(one) && watts(one).isPresent()).size(),
                unreckoned.size(),
                unreckoned.stream()
                        .flatMap(one -> rated(one).stream())
                        .mapToDouble(watts -> watts)
                        .sum());
    }

    private static List<FittingFacts> those(List<FittingFacts> all, Predicate<FittingFacts> wanted) {
        return all.stream().filter(wanted).toList();
    }

    private static Optional<Double> watts(FittingFacts fitting) {
        return isDimmed(fitting)
                ? left(fitting).flatMap(share -> rated(fitting).map(watts -> watts * share))
                : rated(fitting);
    }

    private static Optional<Double> rated(FittingFacts fitting) {
        return fitting.lamp().model().watts();
    }

    private static boolean isDimmed(FittingFacts fitting) {
        return fitting.hanging().gear().isDimmed();
    }

    /** The share of its power that a dimmer leaves; what it leaves of other kinds of lamps is not known. */
    private static Optional<Double> left(FittingFacts fitting) {
        return Optional.of(fitting.lamp().model().lampClass())
                .filter(LampClass.TUNGSTEN_HALOGEN::equals)
                .flatMap(tungsten -> fitting.hanging().gear().voltageRatio())
                .map(ratio -> new DimmedTungsten(ratio).power());
    }
}
