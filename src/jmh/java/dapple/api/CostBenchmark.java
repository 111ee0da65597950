package dapple.api;

import dapple.api.Asked.Grid;
import dapple.light.field.Facing;
import dapple.light.field.Scene;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a grid facing up costs on one thread, against the number of its places, of lamps and of solids: in an enclosure
 * of 1.2 by 0.6 by 0.9 m with three lamps and three boxes, of which one number grows. Lamps are tubes and faces in turn,
 * solids boxes of 2 to 6 cm.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:ActiveProcessorCount=1")
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 5, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class CostBenchmark {
    private static final Engine ENGINE = new Engine(Duration.ofMinutes(10));
    private static final double ACCURACY = 0.005;
    private static final int USUAL = 3;

    /** Grids have 24 places times the cube of this. */
    private static final int USUAL_FINENESS = 4;

    private static final int SEED = 5;

    @Benchmark
    public Object receivers(Receivers of) {
        return ENGINE.run(run -> LightField.of(of.asked, run));
    }

    @Benchmark
    public Object lamps(Lamps of) {
        return ENGINE.run(run -> LightField.of(of.asked, run));
    }

    @Benchmark
    public Object solids(Solids of) {
        return ENGINE.run(run -> LightField.of(of.asked, run));
    }

    @State(Scope.Benchmark)
    public static class Receivers {
        @Param({"24", "192", "1536", "12288", "41472"})
        int count;

        private Asked asked = asked(USUAL, USUAL, USUAL_FINENESS);

        @Setup
        public void set() {
            asked = asked(USUAL, USUAL, (int) Math.round(Math.cbrt(count / 24.0)));
        }
    }

    @State(Scope.Benchmark)
    public static class Lamps {
        @Param({"1", "2", "5", "10", "20", "50", "100", "200"})
        int count;

        private Asked asked = asked(USUAL, USUAL, USUAL_FINENESS);

        @Setup
        public void set() {
            asked = asked(count, USUAL, USUAL_FINENESS);
        }
    }

    @State(Scope.Benchmark)
    public static class Solids {
        @Param({"1", "2", "5", "10", "20", "50", "100", "200"})
        int count;

        private Asked asked = asked(USUAL, USUAL, USUAL_FINENESS);

        @Setup
        public void set() {
            asked = asked(USUAL, count, USUAL_FINENESS);
        }
    }

    private static Asked asked(int lamps, int solids, int fineness) {
        Random ofLamps = new Random(SEED);
        Random ofSolids = new Random(SEED + 1);
        List<Lamp> hung = IntStream.range(0, lamps)
                .mapToObj(index -> lamp(index, ofLamps))
                .toList();
        List<Solid> standing =
                IntStream.range(0, solids).mapToObj(index -> box(ofSolids)).toList();
        double step = 0.3 / fineness;
        Vec from = new Vec(step / 2, step / 2, step / 2);
        Grid grid = new Grid(from, step, 4 * fineness, 2 * fineness, 3 * fineness, new Facing.Direction(Vec.UP));
        Scene scene = new Scene(ACCURACY, hung, List.of(), standing);
        return new Asked(scene, List.of(), Optional.of(grid), Optional.empty(), Optional.empty());
    }

    private static Lamp lamp(int index, Random random) {
        Vec centre = new Vec(0.2 + 0.8 * random.nextDouble(), 0.1 + 0.4 * random.nextDouble(), 0.95);
        Source source = index % 2 == 0
                ? new Source.Cylinder(0.3, new Vec(1, 0, 0), 0.008)
                : new Source.Face(Beam.Power.ofBeamAngle(40), 0.03);
        List<Output> outputs = List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1));
        return new Lamp("lamp" + index, centre, new Vec(0, 0, -1), source, outputs);
    }

    private static Solid box(Random random) {
        Vec least = new Vec(1.14 * random.nextDouble(), 0.54 * random.nextDouble(), 0.8 * random.nextDouble());
        Vec size = new Vec(
                0.02 + 0.04 * random.nextDouble(),
                0.02 + 0.04 * random.nextDouble(),
                0.02 + 0.04 * random.nextDouble());
        return Box.of(least, least.plus(size), 90 * random.nextDouble());
    }
}
