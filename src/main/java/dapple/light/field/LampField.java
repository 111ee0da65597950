package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One lamp of a scene: how strong it is in each quantity, and which quantities pass its filters alike. */
final class LampField {
    private static final double CALIBRATION_ACCURACY = 1e-9;

    private final Lamp lamp;
    private final Emitter emitter;
    private final Map<Quantity, Double> scales = new EnumMap<>(Quantity.class);
    private final Map<Quantity, Quantity> channels = new EnumMap<>(Quantity.class);

    LampField(Lamp lamp, List<Filter> filters) {
        this.lamp = lamp;
        this.emitter = Emitter.of(lamp);
        Map<Quantity, List<Output>> outputs = new EnumMap<>(Quantity.class);
        lamp.outputs()
                .forEach(output -> outputs.computeIfAbsent(output.quantity(), unused -> new ArrayList<>())
                        .add(output));
        outputs.forEach((quantity, all) -> scales.put(quantity, scale(all)));
        channels(filters);
    }

    Lamp lamp() {
        return lamp;
    }

    Emitter emitter() {
        return emitter;
    }

    Map<Quantity, Double> scales() {
        return scales;
    }

    /** The quantity whose filtered light stands for this one's too. */
    Quantity channel(Quantity quantity) {
        return channels.getOrDefault(quantity, quantity);
    }

    private double scale(List<Output> outputs) {
        if (outputs.get(0) instanceof Output.Emission emission) {
            return emission.amount() * emission.factor();
        }
        double ratios = 0;
        double squares = 0;
        for (Output output : outputs) {
            Output.Reading reading = (Output.Reading) output;
            double ratio = unit(reading.at(), reading.facing()) / (reading.reading() * reading.factor());
            ratios += ratio;
            squares += ratio * ratio;
        }
        if (!(ratios > 0)) {
            throw new IllegalArgumentException("the lamp gives no light where its output was read");
        }
        return ratios / squares;
    }

    private double unit(Vec place, Vec facing) {
        Tally light = new Tally();
        View view = View.facing(facing);
        new UnitField(emitter, List.of(), List.of()).alone(place, view, CALIBRATION_ACCURACY, light);
        return view.figure(light);
    }

    /** Quantities that every filter treats alike share their light. */
    private void channels(List<Filter> filters) {
        Map<List<Object>, Quantity> known = new HashMap<>();
        for (Quantity quantity : scales.keySet()) {
            List<Object> treatment = new ArrayList<>();
            filters.forEach(filter -> treatment.add(treatment(filter, quantity)));
            channels.put(quantity, known.computeIfAbsent(treatment, unused -> quantity));
        }
    }

    private static Object treatment(Filter filter, Quantity quantity) {
        if (filter instanceof Filter.Measured measured) {
            return measured.transmittances().getOrDefault(quantity, 0.0);
        }
        return filter instanceof Filter.Pane pane ? pane.absorptionPerMetre().getOrDefault(quantity, 0.0) : 0.0;
    }
}
