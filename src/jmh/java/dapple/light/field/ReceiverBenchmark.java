package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One receiver that faces up under a tube of 0.85 m with nothing between, as a thin line and as a cylinder. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ReceiverBenchmark {
    private static final int PLACES = 256;

    private final Field line = field(new Source.Line(0.85, new Vec(1, 0, 0), Optional.empty()));
    private final Field cylinder = field(new Source.Cylinder(0.85, new Vec(1, 0, 0), 0.008));
    private final List<Receiver> receivers =
            IntStream.range(0, PLACES).mapToObj(ReceiverBenchmark::receiver).toList();
    private int next;

    @Benchmark
    public Object underALine() {
        return line.at(receivers.get(next++ % PLACES));
    }

    @Benchmark
    public Object underACylinder() {
        return cylinder.at(receivers.get(next++ % PLACES));
    }

    private static Field field(Source source) {
        Lamp lamp = new Lamp(
                "tube",
                new Vec(0, 0, 0.95),
                new Vec(0, 0, -1),
                source,
                List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
        return Field.of(new Scene(Scene.USUAL_ACCURACY, List.of(lamp), List.of(), List.of()));
    }

    private static Receiver receiver(int index) {
        int row = index / 16;
        return new Receiver(new Vec(index % 16 * 0.07 - 0.5, 0.1, row * 0.05), new Facing.Direction(Vec.UP));
    }
}
