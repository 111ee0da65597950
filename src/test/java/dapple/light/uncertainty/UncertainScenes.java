package dapple.light.uncertainty;

import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;

/**
 * Scenes from a seed, how unsure they are, and what comes out when every input is drawn from its distribution: the
 * propagation of distributions.
 */
record UncertainScenes(Scene scene, Receiver receiver, SceneUncertainty uncertainty) {
    private static final Vec DOWN = new Vec(0, 0, -1);

    /** Relative uncertainties of a few per cent and 4 mm: what somebody who takes care has. */
    private static final SceneUncertainty CAREFUL = new SceneUncertainty(0.05, 0.06, 0.004, 0.03);

    /** A tube and a spot under a mesh, each read once, a receiver 25 to 45 cm below. */
    static UncertainScenes open(long seed) {
        Random random = new Random(seed);
        return new UncertainScenes(scene(random, List.of()), receiver(random), CAREFUL);
    }

    /** The same with a shelf the edge of whose shade lies within 1 cm of the receiver. */
    static UncertainScenes edge(long seed) {
        Random random = new Random(seed);
        Scene open = scene(random, List.of());
        Receiver receiver = receiver(random);
        Vec place = receiver.place();
        Vec towards = open.lamps().get(1).centre().minus(place);
        double height = 0.12;
        Vec crossing = place.plus(towards.times(height / towards.z()));
        double beside = 0.01 * (2 * random.nextDouble() - 1);
        Solid shelf = Box.of(
                new Vec(crossing.x() + beside, crossing.y() - 0.1, place.z() + height),
                new Vec(crossing.x() + 0.2, crossing.y() + 0.1, place.z() + height + 0.01),
                0);
        Scene shaded = new Scene(open.accuracy(), open.lamps(), open.filters(), List.of(shelf));
        return new UncertainScenes(shaded, receiver, CAREFUL);
    }

    private static Receiver receiver(Random random) {
        Vec place =
                new Vec(0.3 + 0.3 * random.nextDouble(), 0.3 * random.nextDouble(), 0.55 + 0.2 * random.nextDouble());
        Facing facing = random.nextBoolean() ? new Facing.Direction(Vec.UP) : new Facing.Maximum();
        return new Receiver(place, facing);
    }

    private static Scene scene(Random random, List<Solid> solids) {
        Optional<Source.Reflector> reflector = Optional.of(new Source.Reflector(1.5, 0.05));
        Lamp tube = lamp(
                "tube",
                new Vec(0.4, 0.1, 1),
                new Source.Line(0.6, new Vec(1, 0, 0), reflector),
                3 + random.nextDouble());
        Lamp spot = lamp(
                "spot",
                new Vec(0.3 + 0.4 * random.nextDouble(), 0.2, 1),
                new Source.Spot(new Beam.Power(2 + 6 * random.nextDouble())),
                4 + random.nextDouble());
        Filter mesh = new Filter.Mesh(Filter.Plane.of(new Vec(0, 0, 0.9), Vec.UP, Optional.empty()), 0.0003, 0.003, 1);
        return new Scene(1e-3, List.of(tube, spot), List.of(mesh), solids);
    }

    private static Lamp lamp(String id, Vec centre, Source source, double reading) {
        Output output = new Output.Reading(Quantity.UV_INDEX, reading, centre.plus(DOWN.times(0.3)), Vec.UP, 1);
        return new Lamp(id, centre, DOWN, source, List.of(output));
    }

    double value() {
        return value(scene, receiver);
    }

    private static double value(Scene scene, Receiver receiver) {
        return Field.of(scene).at(receiver).values().getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }

    /** What one quantity may be, so many times. */
    double[] draws(int count) {
        Random random = new Random(12345);
        return DoubleStream.generate(() -> draw(random)).limit(count).toArray();
    }

    private double draw(Random random) {
        double meter = 1 + uncertainty.meter() * random.nextGaussian();
        List<Lamp> lamps = new ArrayList<>();
        for (Lamp lamp : scene.lamps()) {
            double scale = meter
                    * (1 + uncertainty.reading() * random.nextGaussian())
                    * (1 + uncertainty.model() * random.nextGaussian());
            lamps.add(raised(lamp, uncertainty.positionMetres() * random.nextGaussian(), scale));
        }
        Vec error = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        Vec place = receiver.place().plus(error.times(uncertainty.positionMetres()));
        return value(
                new Scene(scene.accuracy(), lamps, scene.filters(), scene.solids()),
                new Receiver(place, receiver.facing()));
    }

    private static Lamp raised(Lamp lamp, double metres, double scale) {
        Vec way = Vec.UP.times(metres);
        List<Output> outputs = lamp.outputs().stream()
                .map(Output.Reading.class::cast)
                .<Output>map(read -> new Output.Reading(
                        read.quantity(), read.reading() * scale, read.at().plus(way), read.facing(), 1))
                .toList();
        return new Lamp(lamp.id(), lamp.centre().plus(way), lamp.aim(), lamp.source(), outputs);
    }
}
