package dapple.light.design;

import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** An invented enclosure of 1.2 m by 0.6 m by 0.9 m from a seed, with a tube and a spot under or over a mesh and a shelf. */
record SeededEnclosure(Scene scene, Receiver receiver) {
    static final Vec DOWN = new Vec(0, 0, -1);
    private static final double ACCURACY = 1e-4;

    static SeededEnclosure of(long seed) {
        Random random = new Random(seed * 7919);
        Lamp tube = tube("tube", new Vec(between(random, 0.4, 0.8), 0.3, 0.8), between(random, 2, 6), 3000);
        Lamp spot = spot("spot", new Vec(between(random, 0.3, 0.9), 0.3, 0.8), between(random, 1, 5), 20_000);
        double meshHeight = between(random, 0.5, 0.85);
        List<Solid> solids = random.nextBoolean() ? List.of(shelf(random)) : List.of();
        Vec place = new Vec(between(random, 0.2, 1), between(random, 0.2, 0.4), between(random, 0.02, 0.3));
        Facing facing = random.nextBoolean() ? new Facing.Direction(Vec.UP) : new Facing.Maximum();
        return new SeededEnclosure(
                new Scene(ACCURACY, List.of(tube, spot), List.of(mesh(meshHeight, 1)), solids),
                new Receiver(place, facing));
    }

    private static Solid shelf(Random random) {
        double x = between(random, 0.1, 0.8);
        return Box.of(new Vec(x, 0.1, 0.35), new Vec(x + 0.3, 0.5, 0.37), 0);
    }

    static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    static Filter.Mesh mesh(double heightMetres, int layers) {
        Filter.Plane plane = Filter.Plane.of(new Vec(0, 0, heightMetres), Vec.UP, Optional.empty());
        return new Filter.Mesh(plane, 0.0004, 0.003, layers);
    }

    /** A tube of 55 cm with a reflector, read 30 cm below. */
    static Lamp tube(String id, Vec centre, double uvIndex, double lux) {
        Source source = new Source.Line(0.55, new Vec(1, 0, 0), Optional.of(new Source.Reflector(1.5, 0.05)));
        return lamp(id, centre, source, uvIndex, lux);
    }

    static Lamp spot(String id, Vec centre, double uvIndex, double lux) {
        return lamp(id, centre, new Source.Spot(new Beam.Power(6)), uvIndex, lux);
    }

    static Lamp lamp(String id, Vec centre, Source source, double uvIndex, double lux) {
        return new Lamp(
                id,
                centre,
                DOWN,
                source,
                List.of(read(Quantity.UV_INDEX, uvIndex, centre, 0.3), read(Quantity.ILLUMINANCE, lux, centre, 0.3)));
    }

    static Output read(Quantity quantity, double reading, Vec centre, double distance) {
        return new Output.Reading(quantity, reading, centre.plus(DOWN.times(distance)), Vec.UP, 1);
    }

    HeightTask lifting(String lampId) {
        return new HeightTask(scene, lampId, receiver, Quantity.UV_INDEX, new Interval(0.1, 0.9));
    }
}
