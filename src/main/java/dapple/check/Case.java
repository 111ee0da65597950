package dapple.check;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.zone.Grain;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.rig.FittingFacts;
import dapple.rig.LeftOut;
import dapple.rig.RigScene;
import dapple.site.Formats;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that checks look at.
 *
 * @param light computed of the scene
 * @param grain how finely resting places were looked at for it
 * @param resting what falls where animals rest, of the same scene
 */
record Case(EnclosureScene scene, LightInside light, Grain grain, RestingLight resting, Known known, Formats formats) {
    /** For the sake of decimals such as 0.3. */
    private static final double ROUNDING = 1e-6;

    RigScene rig() {
        return scene.rig();
    }

    List<FittingFacts> fittings(Predicate<LampClass> wanted) {
        return scene.rig().rig().fittings().stream()
                .filter(fitting -> wanted.test(fitting.lamp().model().lampClass()))
                .toList();
    }

    /** Whether a quantity is predicted, and nothing is known to be missing from it. */
    boolean isWhole(Quantity quantity) {
        return rig().quantities().contains(quantity) && rig().isWhole(quantity);
    }

    /** Why a quantity is not predicted, or not whole: the lamps and covers that are not known well enough. */
    String missing(Quantity quantity) {
        List<String> names = rig().leftOut().stream()
                .filter(one -> one.quantity().isEmpty()
                        || one.quantity().filter(quantity::equals).isPresent())
                .map(LeftOut::name)
                .distinct()
                .toList();
        return names.isEmpty() ? "–" : String.join(", ", names);
    }

    /** Where animals are meant to bask: the basking point, else where they rest with most ultraviolet. */
    Optional<Vec> baskingPlace() {
        return scene.baskingPoint()
                .flatMap(point -> point.position())
                .map(at -> new Vec(at.xMetres(), at.yMetres(), at.zMetres()))
                .or(() -> resting.most(Quantity.UV_INDEX).map(RestingLight.Sample::place));
    }

    /** A length in whole centimetres, never more than it is, so that what fails does not read as if it held. */
    String centimetres(double metres) {
        return Math.round(Math.floor(metres * 100 + ROUNDING)) + "\u00a0cm";
    }

    /** A share in whole percent, likewise. */
    String percent(double share) {
        return formats.percent(Math.floor(share * 100 + ROUNDING) / 100);
    }

    String place(Vec at) {
        return Stream.of(at.x(), at.y(), at.z()).map(formats::metres).collect(Collectors.joining(" / "));
    }

    static String tags(List<FittingFacts> fittings) {
        return fittings.stream()
                .map(FittingFacts::lamp)
                .map(LampFacts::tag)
                .sorted(Comparator.naturalOrder())
                .collect(Collectors.joining(", "));
    }
}
