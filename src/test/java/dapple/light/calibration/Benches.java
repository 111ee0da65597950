package dapple.light.calibration;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import dapple.light.uncertainty.StandardUncertainty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Benches from a seed: a lamp that is known, readings of it with normal noise, and the lamp as somebody would start with.
 *
 * @param truth the lamp that made the readings
 * @param offsetMetres how far behind its face it seems to be
 */
record Benches(Lamp truth, double offsetMetres, Bench bench) {
    /** Relative noise of every reading. */
    static final double NOISE = 0.04;

    /** Noise of the display, in the quantity's unit. */
    static final double FLOOR = 0.003;

    private static final StandardUncertainty UNCERTAINTY = new StandardUncertainty(NOISE, FLOOR);
    private static final Vec FACE = new Vec(0.5, 0.3, 1);
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Vec ALONG = new Vec(1, 0, 0);

    /** A spot that seems to be up to 8 cm behind its face, read on the axis and off it, in two quantities. */
    static Benches spot(long seed) {
        return spot(new Random(seed), 1);
    }

    static Benches spot(Random random, double noise) {
        double exponent = 2 + 25 * random.nextDouble();
        double offset = 0.08 * random.nextDouble();
        Lamp truth = new Lamp(
                "spot",
                FACE.minus(DOWN.times(offset)),
                DOWN,
                new Source.Spot(new Beam.Power(exponent)),
                List.of(emission(Quantity.UV_INDEX, 0.3 + random.nextDouble()), emission(Quantity.ILLUMINANCE, 3000)));
        double half = Math.toDegrees(Math.acos(Math.pow(0.5, 1 / exponent)));
        List<Place> places = new ArrayList<>();
        for (double distance : new double[] {0.12, 0.2, 0.35, 0.5}) {
            places.add(Place.of(distance, 0));
            places.add(Place.of(distance, half));
            places.add(Place.of(distance, -1.5 * half));
        }
        Lamp start = new Lamp("spot", FACE, DOWN, new Source.Spot(new Beam.Power(8)), List.of());
        return new Benches(truth, offset, new Bench(start, readings(truth, places, random, noise), Set.of()));
    }

    /** A tube with a reflector, read below, at 45° and behind. */
    static Benches tube(long seed) {
        return tube(new Random(seed), 1);
    }

    static Benches tube(Random random, double noise) {
        Source.Reflector reflector =
                new Source.Reflector(0.7 + 2 * random.nextDouble(), 0.02 + 0.2 * random.nextDouble());
        Lamp truth = tube(reflector, List.of(emission(Quantity.UV_INDEX, 0.5 + random.nextDouble())));
        List<Place> places = new ArrayList<>();
        for (double distance : new double[] {0.15, 0.25, 0.4}) {
            for (double angle : new double[] {0, 30, -45, 60, 120}) {
                places.add(Place.of(distance, angle));
            }
        }
        Lamp start = tube(new Source.Reflector(1, 0.05), List.of());
        return new Benches(truth, 0, new Bench(start, readings(truth, places, random, noise), Set.of()));
    }

    private static Lamp tube(Source.Reflector reflector, List<Output> outputs) {
        return new Lamp("tube", FACE, DOWN, new Source.Line(0.6, ALONG, Optional.of(reflector)), outputs);
    }

    static Output emission(Quantity quantity, double amount) {
        return new Output.Emission(quantity, amount, 1);
    }

    /** A sensor at a distance from the face, at an angle from the aim across the x axis, turned to the face. */
    record Place(Vec at, Vec facing) {
        static Place of(double distance, double degrees) {
            double angle = Math.toRadians(degrees);
            Vec way = new Vec(0, Math.sin(angle), -Math.cos(angle));
            return new Place(FACE.plus(way.times(distance)), way.times(-1));
        }
    }

    static List<BenchReading> readings(Lamp truth, List<Place> places, Random random, double noise) {
        Field field = Field.of(new Scene(1e-6, List.of(truth), List.of(), List.of()));
        List<BenchReading> readings = new ArrayList<>();
        for (Place place : places) {
            Receiver sensor = new Receiver(place.at(), new Facing.Direction(place.facing()));
            field.at(sensor).values().forEach((quantity, amount) -> {
                double read = amount + noise * UNCERTAINTY.at(amount) * random.nextGaussian();
                readings.add(new BenchReading(quantity, place.at(), place.facing(), Math.max(0, read), UNCERTAINTY));
            });
        }
        return readings;
    }

    double trueValue(Parameter parameter) {
        if (parameter instanceof Parameter.Emission emission) {
            return truth.outputs().stream()
                    .filter(output -> output.quantity() == emission.quantity())
                    .mapToDouble(output -> ((Output.Emission) output).amount())
                    .findFirst()
                    .orElseThrow();
        }
        return switch ((Parameter.Shape) parameter) {
            case OFFSET -> offsetMetres;
            case EXPONENT -> ((Beam.Power) ((Source.Spot) truth.source()).beam()).exponent();
            case LOBE -> reflector().lobe();
            case SPILL -> reflector().spill();
        };
    }

    private Source.Reflector reflector() {
        return ((Source.Line) truth.source()).reflector().orElseThrow();
    }

    /** The same bench with other readings. */
    Bench with(List<BenchReading> readings) {
        return new Bench(bench.lamp(), readings, bench.held());
    }
}
