package dapple.light.uncertainty;

import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * What an amount becomes when something is moved.
 *
 * @param times by how many of its standard uncertainties, above 0
 * @param difference from the amount as it is
 * @param ofOutput gives k · u of the moved amount by readings, meter and model; asked for only where it matters
 */
record Probe(double times, double difference, DoubleSupplier ofOutput) {
    /** The largest difference upwards, at least 0. */
    static double up(List<Probe> probes) {
        return probes.stream().mapToDouble(Probe::difference).reduce(0, Math::max);
    }

    /** The largest difference downwards, at least 0. */
    static double down(List<Probe> probes) {
        return probes.stream().mapToDouble(probe -> -probe.difference).reduce(0, Math::max);
    }

    /** k · u by the least steep way among those along one line: what is left when a step lies on one side. */
    static double straight(List<Probe> probes) {
        return probes.stream()
                .mapToDouble(probe -> Math.abs(probe.difference) * UncertainAmount.COVERAGE_FACTOR / probe.times)
                .min()
                .orElse(0);
    }

    /** Where the moved amount itself may lie. */
    double low(double value) {
        return value + difference - ofOutput.getAsDouble();
    }

    double high(double value) {
        return value + difference + ofOutput.getAsDouble();
    }
}
