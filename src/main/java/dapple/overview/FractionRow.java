package dapple.overview;

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
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A part of sunlight at the basking point.
 *
 * @param sources tags of the lamps that are known to give it
 * @param band what the species that is shown asks for there; empty: nothing
 */
record FractionRow(
        Fraction fraction,
        Quantity quantity,
        List<String> sources,
        Optional<JudgedReading> measured,
        Optional<Predicted> predicted,
        Optional<Band> band) {
    /** A part of sunlight, with the quantities that stand for it. */
    enum Fraction {
        /** Its effect on skin, as a UV index; and what older meters read. */
        UVB(Quantity.UV_INDEX, Quantity.UVB_IRRADIANCE),
        UVA(Quantity.UVA),
        VISIBLE(Quantity.ILLUMINANCE),
        NEAR_INFRARED(Quantity.IR_A, Quantity.IR_B, Quantity.IRRADIANCE);

        private final List<Quantity> quantities;

        Fraction(Quantity... quantities) {
            this.quantities = List.of(quantities);
        }
    }

    /** Each part by what stands for it first, and by what else is known of it. */
    static List<FractionRow> all(EnclosureScene scene, LightInside light, Newest newest) {
        return Stream.of(Fraction.values())
                .flatMap(fraction -> fraction.quantities.stream()
                        .map(quantity -> of(fraction, quantity, scene, light, newest))
                        .filter(row -> row.isFirst() || row.isKnown()))
                .toList();
    }

    private static FractionRow of(
            Fraction fraction, Quantity quantity, EnclosureScene scene, LightInside light, Newest newest) {
        var basking = scene.points().stream()
                .filter(point -> point.role() == PointRole.BASKING)
                .toList();
        return new FractionRow(
                fraction,
                quantity,
                sources(scene, quantity),
                basking.stream()
                        .flatMap(point -> newest.at(point, quantity).stream())
                        .findFirst(),
                scene.baskingPoint().flatMap(point -> light.at(point, quantity)),
                scene.shown()
                        .flatMap(need -> need.limits(quantity))
                        .map(Limits::basking)
                        .filter(band -> !band.isOpen()));
    }

    private static List<String> sources(EnclosureScene scene, Quantity quantity) {
        return scene.rig().rig().fittings().stream()
                .map(FittingFacts::lamp)
                .filter(lamp ->
                        lamp.outputs().stream().map(LampOutput::quantity).anyMatch(quantity::equals))
                .map(LampFacts::tag)
                .toList();
    }

    boolean isFirst() {
        return fraction.quantities.get(0) == quantity;
    }

    boolean isKnown() {
        return !sources.isEmpty() || measured.isPresent() || predicted.isPresent() || band.isPresent();
    }
}
