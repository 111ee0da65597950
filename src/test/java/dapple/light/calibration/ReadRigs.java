package dapple.light.calibration;

import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Rigs from a seed: two or three lamps over an enclosure of 1.20 × 0.60 × 0.70 m, a mesh over all of it or over its right
 * half, and five to eight points, each read once by a hand-held meter where it is held, 1 cm off in each coordinate.
 */
final class ReadRigs {
    static final double OUTPUT = 0.15;
    static final double COVER = 0.10;
    static final double POSITION = 0.01;
    private static final double STATED_SHARE = 0.7;
    private static final MeterUncertainty METER = MeterUncertainty.ofResolution(0.1);
    private static final Vec DOWN = new Vec(0, 0, -1);

    private final Random random;
    private final List<Double> outputs = new ArrayList<>();
    private final double cover;
    private final double meter;
    private final boolean half;
    private final List<Vec> points = new ArrayList<>();
    private final Map<Integer, Vec> moved = new HashMap<>();

    private ReadRigs(long seed) {
        this.random = new Random(seed);
        int lamps = 2 + random.nextInt(2);
        for (int lamp = 0; lamp < lamps; lamp++) {
            outputs.add(Math.exp(OUTPUT * random.nextGaussian()));
        }
        this.cover = Math.min(1 / STATED_SHARE, Math.exp(COVER * random.nextGaussian()));
        this.meter = Math.exp(RigReading.SHARED * METER.share() / 2 * random.nextGaussian());
        this.half = random.nextBoolean();
        int count = 5 + random.nextInt(4);
        points.add(new Vec(0.8 + 0.1 * random.nextDouble(), 0.25 + 0.1 * random.nextDouble(), 0.25));
        for (int point = 1; point < count; point++) {
            points.add(new Vec(
                    0.1 + random.nextDouble(), 0.1 + 0.4 * random.nextDouble(), 0.03 + 0.3 * random.nextDouble()));
        }
    }

    static ReadRigs of(long seed) {
        return new ReadRigs(seed);
    }

    /** The shelf with the first point on it is higher than anybody has recorded. */
    ReadRigs withTheShelfRaised(double metres) {
        moved.put(0, Vec.UP.times(metres));
        return this;
    }

    /** Instead of the first lamp one hangs that gives so much less than what is stated. */
    ReadRigs withALampSwapped(double factor) {
        outputs.set(0, factor);
        return this;
    }

    List<Double> trueOutputs() {
        return outputs;
    }

    double trueCover() {
        return cover;
    }

    RigTask task() {
        RigSight sight = new RigSight(scene(List.of(1.0, 1.0, 1.0), 1), Quantity.UV_INDEX, POSITION);
        Field truth = Field.of(scene(outputs, cover));
        List<RigReading> readings = new ArrayList<>();
        for (int index = 0; index < points.size(); index++) {
            Vec held = points.get(index)
                    .plus(moved.getOrDefault(index, new Vec(0, 0, 0)))
                    .plus(off());
            SeenLight seen = sight.at(new Receiver(points.get(index), new Facing.Maximum()));
            double light =
                    truth.at(new Receiver(held, new Facing.Maximum())).values().getOrDefault(Quantity.UV_INDEX, 0.0);
            readings.add(RigReading.of("P" + index, "M1", METER, shown(light), seen));
        }
        List<RigTask.Stated> lamps = new ArrayList<>();
        for (int lamp = 0; lamp < outputs.size(); lamp++) {
            lamps.add(new RigTask.Stated("L" + lamp, OUTPUT));
        }
        return new RigTask(lamps, List.of(new RigTask.Stated("mesh", COVER)), readings);
    }

    private Vec off() {
        return new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(POSITION);
    }

    /** With the noise of a single reading, on a display of tenths. */
    private double shown(double light) {
        double own = Math.sqrt(1 - RigReading.SHARED * RigReading.SHARED) * METER.share() / 2;
        double read = light * meter * (1 + own * random.nextGaussian());
        return Math.max(0, Math.round(read * 10) / 10.0);
    }

    private Scene scene(List<Double> factors, double coverFactor) {
        Optional<Filter.Rectangle> over = half ? Optional.of(new Filter.Rectangle(0.6, 0, 1.2, 0.6)) : Optional.empty();
        Filter mesh = new Filter.Measured(
                Filter.Plane.of(new Vec(0, 0, 0.7), Vec.UP, over),
                Map.of(Quantity.UV_INDEX, STATED_SHARE * coverFactor),
                1);
        List<Lamp> lamps = List.of(
                lamp("L0", new Vec(0.85, 0.3, 0.75), new Source.Spot(new Beam.Power(6)), 6 * factors.get(0)),
                lamp(
                        "L1",
                        new Vec(0.45, 0.3, 0.76),
                        new Source.Line(0.55, new Vec(1, 0, 0), Optional.of(new Source.Reflector(1.5, 0.05))),
                        4 * factors.get(1)),
                lamp(
                        "L2",
                        new Vec(0.2, 0.3, 0.75),
                        new Source.Spot(new Beam.Power(12)),
                        4 * (outputs.size() > 2 ? factors.get(2) : 1)));
        return new Scene(0.005, lamps.subList(0, outputs.size()), List.of(mesh), List.of());
    }

    private static Lamp lamp(String id, Vec centre, Source source, double uvIndex) {
        Vec at = centre.plus(DOWN.times(0.3));
        return new Lamp(
                id, centre, DOWN, source, List.of(new Output.Reading(Quantity.UV_INDEX, uvIndex, at, Vec.UP, 1)));
    }
}
