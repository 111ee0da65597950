package dapple;

import dapple.api.RealError;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs all benchmarks, prints the error that scene A really has, and writes what the field costs to {@code
 * docs/field-cost.csv} and {@code docs/pictures/field-cost.svg}. The argument is a regular expression of the benchmarks to run.
 */
public final class Benchmarks {
    private static final Path TABLE = Path.of("docs", "field-cost.csv");
    private static final Path PICTURE = Path.of("docs", "pictures", "field-cost.svg");

    private Benchmarks() {}

    public static void main(String[] arguments) throws RunnerException, IOException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(arguments[0])
                        .shouldFailOnError(true)
                        .build())
                .run();
        List<Cost> costs = results.stream()
                .map(Benchmarks::cost)
                .flatMap(Optional::stream)
                .sorted()
                .toList();
        if (!costs.isEmpty()) {
            Files.writeString(TABLE, Cost.table(costs));
            Files.writeString(PICTURE, new CostPlot(costs).drawn());
            costs.stream()
                    .map(Cost::what)
                    .distinct()
                    .forEach(what ->
                            print("Cost grows with %s to the power of %.2f%n", what, Cost.exponent(costs, what)));
        }
        print("Real error of scene A: %.4f %% rms of the mean%n", 100 * RealError.ofSceneA());
    }

    private static Optional<Cost> cost(RunResult result) {
        return Optional.ofNullable(result.getParams().getParam("count"))
                .map(count -> new Cost(
                        result.getPrimaryResult().getLabel(),
                        Integer.parseInt(count),
                        result.getPrimaryResult().getStatistics().getMin()));
    }

    private static void print(String form, Object... arguments) {
        System.out.printf(Locale.ROOT, form, arguments);
    }
}
