package dapple.overview;

import dapple.desk.Newest;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.prediction.Predicted;
import dapple.reading.JudgedReading;
import dapple.rig.FittingFacts;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A part of sunlight at the basking point.
 *
 * @param sources tags of the lamps that are known to give it
 * @param usual tags of the further lamps that give it as usual of their class, nobody knows how much
 * @param lightChanged when the light changed after it was measured, if it did
 * @param band what the species that is shown asks for there; empty: nothing
 */
record FractionRow(
        Fraction fraction,
        Quantity quantity,
        List<String> sources,
        List<String> usual,
        Optional<JudgedReading> measured,
        Optional<Instant> lightChanged,
        Optional<Predicted> predicted,
        Optional<Band> band) {
    /** A part of sunlight, with the quantities that stand for it. */
    enum Fraction {
        UVB,
        UVA,
        VISIBLE,
        NEAR_INFRARED;

        /** What stands for it first of all, then what else may be known of it. */
        List<Quantity> quantities() {
            return switch (this) {
                case UVB -> List.of(Quantity.UV_INDEX, Quantity.UVB_IRRADIANCE);
                case UVA -> List.of(Quantity.UVA);
                case VISIBLE -> List.of(Quantity.ILLUMINANCE);
                case NEAR_INFRARED -> List.of(Quantity.IR_A, Quantity.IR_B, Quantity.IRRADIANCE);
            };
        }

        /** Whether a lamp gives it as usual of its class: common practice, no source. */
        boolean isUsualOf(LampFacts lamp) {
            LampClass kind = lamp.model().lampClass();
            return switch (this) {
                case UVB -> false;
                case UVA -> kind.givesUvaBesideUvb() && gives(lamp, Quantity.UV_INDEX);
                case VISIBLE -> kind.givesLight();
                case NEAR_INFRARED -> kind.givesNearInfrared();
            };
        }
    }

    /** Each part by what stands for it first, and by what else is known of it. */
    static List<FractionRow> all(EnclosureScene scene, LightInside light, ReadSince read) {
        return Stream.of(Fraction.values())
                .flatMap(fraction -> fraction.quantities().stream()
                        .map(quantity -> of(fraction, quantity, scene, light, read))
                        .filter(row -> row.isFirst() || row.isKnown()))
                .toList();
    }

    private static FractionRow of(
            Fraction fraction, Quantity quantity, EnclosureScene scene, LightInside light, ReadSince read) {
        Newest newest = read.newest();
        var basking = scene.points().stream()
                .filter(point -> point.role() == PointRole.BASKING)
                .toList();
        Optional<JudgedReading> measured = basking.stream()
                .flatMap(point -> newest.at(point, quantity).stream())
                .findFirst();
        return new FractionRow(
                fraction,
                quantity,
                tags(scene, lamp -> gives(lamp, quantity)),
                tags(scene, lamp -> fraction.isUsualOf(lamp) && !gives(lamp, quantity)),
                measured,
                measured.flatMap(read::lightChangedSince),
                scene.baskingPoint().flatMap(point -> light.at(point, quantity)),
                scene.shown()
                        .flatMap(need -> need.limits(quantity))
                        .map(Limits::basking)
                        .filter(band -> !band.isOpen()));
    }

    private static List<String> tags(EnclosureScene scene, Predicate<LampFacts> which) {
        return scene.rig().rig().fittings().stream()
                .map(FittingFacts::lamp)
                .filter(which)
                .map(LampFacts::tag)
                .toList();
    }

    private static boolean gives(LampFacts lamp, Quantity quantity) {
        return lamp.outputs().stream().map(LampOutput::quantity).anyMatch(quantity::equals);
    }

    boolean isFirst() {
        return fraction.quantities().get(0) == quantity;
    }

    boolean isKnown() {
        return !sources.isEmpty() || measured.isPresent() || predicted.isPresent() || band.isPresent();
    }
}
