package dapple.lamp;

import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** How far a lamp model reaches along its aim. */
@Component
class OutputReach {
    private static final List<Quantity> DRAWN = List.of(Quantity.UV_INDEX, Quantity.ILLUMINANCE);

    private final ZoneDistances zones;

    OutputReach(ZoneDistances zones) {
        this.zones = zones;
    }

    OutputShown of(LampModelFacts model) {
        List<OutputCurve> curves = DRAWN.stream()
                .flatMap(quantity -> curve(model, quantity).stream())
                .toList();
        Optional<OutputCurve> uvIndex = curves.stream()
                .filter(curve -> curve.output().quantity() == Quantity.UV_INDEX)
                .findFirst();
        return new OutputShown(
                curves.stream().map(CurveShown::of).toList(),
                uvIndex.map(curve -> zones.reach(curve, CurveShown.STRONGEST_CEILING)),
                uvIndex.map(zones::of).orElse(List.of()));
    }

    private static Optional<OutputCurve> curve(LampModelFacts model, Quantity quantity) {
        return model.outputs().stream()
                .filter(output -> output.quantity() == quantity)
                .findFirst()
                .flatMap(output -> OutputCurve.of(output, model.shape()));
    }
}
