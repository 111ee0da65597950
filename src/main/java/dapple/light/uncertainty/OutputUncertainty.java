package dapple.light.uncertainty;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What independent relative errors of a lamp's readings do to its scale s = Σ qᵢ / Σ qᵢ², qᵢ the light of a scale of 1
 * over the reading: cᵢ = ∂ln s/∂ln yᵢ = 2 qᵢ²/Σ qⱼ² − qᵢ/Σ qⱼ, and u(ln s) = u(ln y) · √Σ cᵢ². The cᵢ add up to 1, so
 * that an error that all readings share arrives in full.
 */
final class OutputUncertainty {
    private static final double CLOSE = 1e-6;

    private OutputUncertainty() {}

    /** √Σ cᵢ² of each quantity of a lamp: 1 for one reading or an emission, 1/√n for n that agree. */
    static Map<Quantity, Double> shares(Lamp lamp) {
        Map<Quantity, Double> shares = new EnumMap<>(Quantity.class);
        lamp.outputs().stream()
                .map(Output::quantity)
                .distinct()
                .forEach(quantity -> shares.put(quantity, share(lamp, quantity)));
        return shares;
    }

    private static double share(Lamp lamp, Quantity quantity) {
        List<Output.Reading> readings = lamp.outputs().stream()
                .filter(output -> output.quantity() == quantity)
                .filter(Output.Reading.class::isInstance)
                .map(Output.Reading.class::cast)
                .toList();
        return readings.size() < 2 ? 1 : share(lamp, readings);
    }

    private static double share(Lamp lamp, List<Output.Reading> readings) {
        Field alone = Field.of(new Scene(CLOSE, List.of(lamp), List.of(), List.of()));
        List<Double> ratios =
                readings.stream().map(reading -> ratio(alone, reading)).toList();
        double sum = ratios.stream().mapToDouble(q -> q).sum();
        double squares = ratios.stream().mapToDouble(q -> q * q).sum();
        return Math.sqrt(ratios.stream()
                .mapToDouble(q -> 2 * q * q / squares - q / sum)
                .map(c -> c * c)
                .sum());
    }

    private static double ratio(Field alone, Output.Reading reading) {
        Receiver sensor = new Receiver(reading.at(), new Facing.Direction(reading.facing()));
        double shown = alone.at(sensor).values().getOrDefault(reading.quantity(), 0.0);
        return shown / (reading.reading() * reading.factor());
    }
}
