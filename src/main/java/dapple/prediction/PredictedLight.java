package dapple.prediction;

import dapple.enclosure.PointFacts;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.uncertainty.Intervals;
import dapple.light.uncertainty.SceneUncertainty;
import dapple.rig.RigScene;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The light that a rig gives at points, with 95 % intervals from what is known of each lamp's output and from places that
 * are known to the centimetre. Cover and aims count as exact.
 */
public final class PredictedLight {
    /** Standard uncertainty of each coordinate of a point and of a lamp's height, m: an assumption of ours, no source. */
    public static final double POSITION_METRES = 0.01;

    /** The outputs bring their own uncertainties, meters and model included. */
    private static final SceneUncertainty UNCERTAINTY = new SceneUncertainty(1, 0, POSITION_METRES, 0);

    private final RigScene rig;
    private final Field field;
    private final Intervals intervals;

    private PredictedLight(RigScene rig) {
        this.rig = rig;
        this.field = Field.of(rig.scene());
        this.intervals = Intervals.of(rig.scene(), UNCERTAINTY, rig.relativeUncertainties());
    }

    public static PredictedLight of(RigScene rig) {
        return new PredictedLight(rig);
    }

    /** What falls on a point, by quantity; empty where nothing can be predicted. */
    public Map<Quantity, Predicted> at(PointFacts point) {
        if (!rig.isPredictable()) {
            return Map.of();
        }
        return rig.receiver(point).map(this::at).orElse(Map.of());
    }

    /** What falls on a place, on the plane that has most of a quantity; empty where nothing can be predicted. */
    Optional<Here> here(Vec place, Quantity quantity) {
        if (!rig.isPredictable() || !rig.isOpen(place)) {
            return Optional.empty();
        }
        Receiver receiver = new Receiver(place, new Facing.Maximum());
        Light light = field.at(receiver);
        return Optional.ofNullable(at(receiver, light).get(quantity))
                .map(predicted -> new Here(
                        predicted,
                        light.facing()
                                .map(directions -> directions.getOrDefault(quantity, Vec.UP))
                                .orElse(Vec.UP),
                        lamps(light, quantity, predicted.amount())));
    }

    /** What falls on a place, facing where, and what each lamp gives of it. */
    record Here(Predicted predicted, Vec facing, List<LightHere.FromLamp> lamps) {}

    private List<LightHere.FromLamp> lamps(Light light, Quantity quantity, double whole) {
        List<Lamp> lamps = rig.scene().lamps();
        return IntStream.range(0, lamps.size())
                .filter(index -> light.byLamp().get(index).containsKey(quantity))
                .mapToObj(index -> {
                    double amount = light.byLamp().get(index).getOrDefault(quantity, 0.0);
                    return new LightHere.FromLamp(lamps.get(index).id(), amount, whole > 0 ? amount / whole : 0);
                })
                .sorted(Comparator.comparingDouble(LightHere.FromLamp::amount).reversed())
                .toList();
    }

    private Map<Quantity, Predicted> at(Receiver receiver) {
        return at(receiver, field.at(receiver));
    }

    private Map<Quantity, Predicted> at(Receiver receiver, Light light) {
        if (!light.values().values().stream().allMatch(Double::isFinite)) {
            return Map.of();
        }
        Map<Quantity, Interval> ranges = intervals.at(field, receiver, light);
        Map<Quantity, Predicted> predicted = new EnumMap<>(Quantity.class);
        light.values()
                .forEach((quantity, amount) -> Optional.ofNullable(ranges.get(quantity))
                        .ifPresent(
                                range -> predicted.put(quantity, new Predicted(amount, range, rig.isWhole(quantity)))));
        return predicted;
    }
}
