package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.ShadowBounds;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * One lamp of a scene: how strong it is in each quantity, and which quantities pass the filters alike, so that they
 * share a channel. Not changed by being asked, so that threads may share it.
 */
final class LampField {
    private static final double CALIBRATION_ACCURACY = 1e-9;

    private final Lamp lamp;
    private final Emitter emitter;
    private final List<ShadowBounds> bounds;
    private final Map<Quantity, Double> scales = new EnumMap<>(Quantity.class);
    private final List<Quantity> channels = new ArrayList<>();
    private final List<List<Object>> treatments = new ArrayList<>();
    private final Map<Quantity, Integer> channelOf = new EnumMap<>(Quantity.class);

    LampField(Lamp lamp, List<Filter> filters, List<Solid> solids) {
        this.lamp = lamp;
        this.emitter = Emitter.of(lamp);
        this.bounds = solids.stream()
                .map(solid -> ShadowBounds.between(emitter.hull(), solid.hull()))
                .toList();
        Map<Quantity, List<Output>> outputs = new EnumMap<>(Quantity.class);
        lamp.outputs()
                .forEach(output -> outputs.computeIfAbsent(output.quantity(), unused -> new ArrayList<>())
                        .add(output));
        outputs.forEach((quantity, all) -> scales.put(quantity, scale(all)));
        scales.keySet().forEach(quantity -> channelOf.put(quantity, channel(quantity, filters)));
    }

    Lamp lamp() {
        return lamp;
    }

    /** The lamp's light among solids and filters, for one thread. */
    UnitField unit(List<Solid> solids, List<Filter> filters) {
        return new UnitField(emitter, solids, bounds, filters);
    }

    /** How strong the lamp is in a quantity; 0 in one that it does not name. */
    double scale(Quantity quantity) {
        return scales.getOrDefault(quantity, 0.0);
    }

    boolean names(Quantity quantity) {
        return scales.containsKey(quantity);
    }

    /** For each channel one of the quantities that share it. */
    List<Quantity> channels() {
        return channels;
    }

    /** The channel of a quantity that the lamp names. */
    int channel(Quantity quantity) {
        return channelOf.getOrDefault(quantity, 0);
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

    /** What a sensor would read of the lamp alone, with an emission of 1. */
    private double unit(Vec place, Vec facing) {
        Tally light = new Tally();
        View view = View.facing(facing);
        new UnitField(emitter, List.of(), List.of(), List.of())
                .light(place, Quantity.UV_INDEX, view, CALIBRATION_ACCURACY, 0, light);
        return view.figure(light);
    }

    private int channel(Quantity quantity, List<Filter> filters) {
        List<Object> treatment = new ArrayList<>();
        filters.forEach(filter -> treatment.add(treatment(filter, quantity)));
        int known = treatments.indexOf(treatment);
        if (known >= 0) {
            return known;
        }
        treatments.add(treatment);
        channels.add(quantity);
        return channels.size() - 1;
    }

    private static Object treatment(Filter filter, Quantity quantity) {
        if (filter instanceof Filter.Measured measured) {
            return measured.transmittances().getOrDefault(quantity, 0.0);
        }
        return filter instanceof Filter.Pane pane ? pane.absorptionPerMetre().getOrDefault(quantity, 0.0) : 0.0;
    }
}
