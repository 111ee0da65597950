package dapple.api;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The scenes A and B as the interface for programs computes them, once they are read: lamps fitted, the grid shared out
 * to the processors, every place stored.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
public class SceneBenchmark {
    private static final int RECEIVERS = 50_000;

    private final Asked a;
    private final Asked b;
    private final Engine engine = new Engine(Duration.ofMinutes(10));

    public SceneBenchmark() {
        try {
            a = SceneDocuments.read("a");
            b = SceneDocuments.read("b");
        } catch (IOException cause) {
            throw new IllegalStateException(cause);
        }
    }

    @Setup
    public void check() {
        if (a.grid().orElseThrow().size() != RECEIVERS) {
            throw new IllegalStateException("scene A must have " + RECEIVERS + " places");
        }
    }

    @TearDown
    public void close() {
        engine.close();
    }

    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OutputTimeUnit(TimeUnit.SECONDS)
    @OperationsPerInvocation(RECEIVERS)
    @Fork(value = 1, jvmArgsAppend = "-XX:ActiveProcessorCount=1")
    @Warmup(iterations = 3, time = 2)
    @Measurement(iterations = 5, time = 2)
    public Object receiversOfSceneAOnOneThread() {
        return engine.run(run -> LightField.of(a, run));
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    @Fork(value = 1, jvmArgsAppend = "-XX:ActiveProcessorCount=2")
    @Warmup(iterations = 2, time = 2)
    @Measurement(iterations = 4, time = 2)
    public Object sceneBOnTwoThreads() {
        return engine.run(run -> LightField.of(b, run));
    }
}
