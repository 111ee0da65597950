package dapple.light.design;

import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One lamp of a scene in whose stead another may hang, with its middle at the same place.
 *
 * @param lampId the lamp that goes
 * @param options those that may take its place, in any of their poses
 * @param demands at least one
 */
public record SwapTask(Scene scene, String lampId, List<LampOption> options, List<Demand> demands) {
    public SwapTask {
        options = List.copyOf(options);
        demands = List.copyOf(demands);
        if (demands.isEmpty()
                || scene.lamps().stream().noneMatch(lamp -> lamp.id().equals(lampId))) {
            throw new IllegalArgumentException("a swap must have demands and a lamp, was " + lampId);
        }
    }

    List<Receiver> receivers() {
        return demands.stream()
                .flatMap(demand -> demand.receivers().stream())
                .distinct()
                .toList();
    }

    /** The scene with another lamp in the place of the one that goes; in no solid, else empty. */
    List<Scene> with(Pose pose) {
        List<Lamp> lamps = new ArrayList<>();
        for (Lamp lamp : scene.lamps()) {
            boolean goes = lamp.id().equals(lampId);
            if (goes && !pose.isClearOf(scene.solids(), lamp.centre())) {
                return List.of();
            }
            lamps.add(goes ? pose.at(lampId, lamp.centre()) : lamp);
        }
        return List.of(new Scene(scene.accuracy(), lamps, scene.filters(), scene.solids()));
    }

    /** What falls on every receiver. */
    List<Map<Quantity, Double>> light(Scene of) {
        Field field = Field.of(of);
        return receivers().stream().map(receiver -> field.at(receiver).values()).toList();
    }

    static Set<Quantity> quantities(List<Map<Quantity, Double>> one, List<Map<Quantity, Double>> other) {
        Set<Quantity> all = EnumSet.noneOf(Quantity.class);
        one.forEach(light -> all.addAll(light.keySet()));
        other.forEach(light -> all.addAll(light.keySet()));
        return all;
    }
}
