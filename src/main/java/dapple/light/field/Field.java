package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The light of a scene, asked for place by place. Not for two threads at once: each makes its own with
 * {@link #another()}; the result does not depend on which one answers.
 */
public final class Field {
    private final Scene scene;
    private final List<LampField> lamps;
    private final List<UnitField> units;
    private final Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);
    private final Brightest brightest = new Brightest(this);

    private Field(Scene scene, List<LampField> lamps) {
        this.scene = scene;
        this.lamps = lamps;
        List<Screen> screens = scene.filters().stream().map(Screen::new).toList();
        this.units = lamps.stream()
                .map(lamp -> new UnitField(lamp.emitter(), scene.solids(), screens))
                .toList();
        lamps.forEach(lamp -> quantities.addAll(lamp.scales().keySet()));
    }

    public static Field of(Scene scene) {
        return new Field(
                scene,
                scene.lamps().stream()
                        .map(lamp -> new LampField(lamp, scene.filters()))
                        .toList());
    }

    public Field another() {
        return new Field(scene, lamps);
    }

    public Scene scene() {
        return scene;
    }

    /** What falls on a receiver. */
    public Light at(Receiver receiver) {
        Facing facing = receiver.facing();
        if (facing instanceof Facing.AllRound) {
            return sum(receiver.place(), quantity -> View.ROUND, Optional.empty());
        }
        if (facing instanceof Facing.Direction direction) {
            return facing(receiver.place(), direction.normal());
        }
        if (facing instanceof Facing.TowardsLamp towards) {
            return facing(
                    receiver.place(), lamp(towards.id()).minus(receiver.place()).unit());
        }
        return brightest(receiver.place());
    }

    private Vec lamp(String id) {
        return scene.lamps().stream()
                .filter(lamp -> lamp.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no lamp " + id))
                .centre();
    }

    private Light facing(Vec place, Vec normal) {
        return sum(place, quantity -> View.facing(normal), Optional.of(all(normal)));
    }

    private Light brightest(Vec place) {
        Map<Quantity, Vec> directions = new EnumMap<>(Quantity.class);
        for (Quantity quantity : quantities) {
            directions.put(quantity, brightest.facing(place, quantity));
        }
        return sum(place, quantity -> View.facing(direction(directions, quantity)), Optional.of(directions));
    }

    private static Vec direction(Map<Quantity, Vec> directions, Quantity quantity) {
        return directions.getOrDefault(quantity, Vec.UP);
    }

    List<LampField> lamps() {
        return lamps;
    }

    UnitField unit(int lamp) {
        return units.get(lamp);
    }

    private Light sum(Vec place, Function<Quantity, View> views, Optional<Map<Quantity, Vec>> facing) {
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        List<Map<Quantity, Double>> byLamp = new ArrayList<>();
        lamps.forEach(lamp -> byLamp.add(new EnumMap<>(Quantity.class)));
        double error = 0;
        for (Quantity quantity : quantities) {
            Answer answer = answer(place, quantity, views.apply(quantity), byLamp);
            values.put(quantity, answer.value);
            error = Math.max(error, answer.relativeError());
        }
        return new Light(values, byLamp, error, facing);
    }

    /** The same direction for every quantity. */
    private Map<Quantity, Vec> all(Vec direction) {
        Map<Quantity, Vec> directions = new EnumMap<>(Quantity.class);
        quantities.forEach(quantity -> directions.put(quantity, direction));
        return directions;
    }

    private Answer answer(Vec place, Quantity quantity, View view, List<Map<Quantity, Double>> byLamp) {
        Answer answer = new Answer();
        Tally tally = new Tally();
        for (int index = 0; index < lamps.size(); index++) {
            LampField lamp = lamps.get(index);
            Double scale = lamp.scales().get(quantity);
            if (scale != null) {
                tally.clear();
                double error = units.get(index).light(place, lamp.channel(quantity), view, scene.accuracy(), tally);
                double value = scale * view.figure(tally);
                byLamp.get(index).put(quantity, value);
                answer.value += value;
                answer.error += scale * error;
                answer.floor += scale * units.get(index).floor();
            }
        }
        return answer;
    }

    /** One quantity's sum under way. */
    private static final class Answer {
        private double value;
        private double error;
        private double floor;

        double relativeError() {
            return error == 0 ? 0 : error / Math.max(Math.max(value, floor), Double.MIN_NORMAL);
        }
    }
}
