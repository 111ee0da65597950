package dapple.light.design;

import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.List;

/**
 * One lamp of a scene that may hang higher or lower, while all else stays.
 *
 * @param lampId the lamp
 * @param heightsMetres allowed for its middle
 */
public record HeightTask(Scene scene, String lampId, Receiver receiver, Quantity quantity, Interval heightsMetres) {
    /** Nearer than this to a receiver no lamp hangs, m. */
    static final double NEAREST_METRES = 0.001;

    /** Farther from the floor no height is taken for one, m. */
    private static final double MOST_METRES = 100;

    public HeightTask {
        Check.within("low height", heightsMetres.low(), -MOST_METRES, MOST_METRES, "m");
        Check.within("high height", heightsMetres.high(), -MOST_METRES, MOST_METRES, "m");
        if (scene.lamps().stream().noneMatch(lamp -> lamp.id().equals(lampId))) {
            throw new IllegalArgumentException("no lamp " + lampId);
        }
    }

    /** The scene with the lamp at a height. */
    public Scene at(double heightMetres) {
        return new Scene(
                scene.accuracy(),
                scene.lamps().stream().map(lamp -> at(lamp, heightMetres)).toList(),
                scene.filters(),
                scene.solids());
    }

    private Lamp at(Lamp lamp, double heightMetres) {
        return lamp.id().equals(lampId) ? new Pose(lamp).at(raised(lamp, heightMetres)) : lamp;
    }

    private static Vec raised(Lamp lamp, double heightMetres) {
        return new Vec(lamp.centre().x(), lamp.centre().y(), heightMetres);
    }

    HeightTask with(double accuracy) {
        Scene closer = new Scene(accuracy, scene.lamps(), scene.filters(), scene.solids());
        return new HeightTask(closer, lampId, receiver, quantity, heightsMetres);
    }

    /** Whether the lamp may hang at a height: in no solid and not on the receiver. */
    boolean isFree(double heightMetres) {
        List<Lamp> moving =
                scene.lamps().stream().filter(lamp -> lamp.id().equals(lampId)).toList();
        return moving.stream().allMatch(lamp -> isFree(new Pose(lamp), raised(lamp, heightMetres)));
    }

    private boolean isFree(Pose pose, Vec centre) {
        return pose.isClearOf(scene.solids(), centre) && pose.distance(centre, receiver.place()) > NEAREST_METRES;
    }

    /** What the engine says at a height. */
    double amount(double heightMetres) {
        return Field.of(at(heightMetres)).at(receiver).values().getOrDefault(quantity, 0.0);
    }
}
