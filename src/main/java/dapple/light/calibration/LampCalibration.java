package dapple.light.calibration;

import dapple.light.calibration.BenchResult.Open;
import dapple.light.calibration.BenchResult.Undetermined;
import dapple.light.calibration.BenchResult.Unfinished;
import dapple.light.quantity.Quantity;
import dapple.light.uncertainty.StandardUncertainty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/** Fits a lamp to the readings of a bench. */
public final class LampCalibration {
    /** Largest emission that a lamp may state. */
    private static final double MOST_EMISSION = 1e12;

    private final Bench bench;
    private final BenchModel model;

    private LampCalibration(Bench bench) {
        this.bench = bench;
        this.model = new BenchModel(bench);
    }

    /**
     * The lamp as its readings have it: what is free minimises Huber's loss of (reading − field)/u; or why there is
     * none. Repeatable to the last bit.
     */
    public static BenchResult of(Bench bench) {
        return new LampCalibration(bench).result();
    }

    private BenchResult result() {
        RealVector start = new ArrayRealVector(model.free().size());
        for (int index = 0; index < model.shapes(); index++) {
            start.setEntry(index, model.shape((Parameter.Shape) model.free().get(index)));
        }
        List<Integer> dark = startEmissions(start);
        return dark.isEmpty() ? fitted(start) : undetermined(dark);
    }

    /** The middle ratio of readings to the light of an emission of 1; gives back those for which there is none. */
    private List<Integer> startEmissions(RealVector start) {
        RealVector unscaled = model.unscaled(start);
        List<Integer> dark = new ArrayList<>();
        for (int index = model.shapes(); index < model.free().size(); index++) {
            Parameter.Emission emission = (Parameter.Emission) model.free().get(index);
            Optional<Double> ratio = middleRatio(emission.quantity(), unscaled);
            start.setEntry(index, ratio.orElse(1.0));
            if (ratio.isEmpty()) {
                dark.add(index);
            }
        }
        return dark;
    }

    private Optional<Double> middleRatio(Quantity quantity, RealVector unscaled) {
        List<Double> ratios = new ArrayList<>();
        for (int index = 0; index < unscaled.getDimension(); index++) {
            BenchReading reading = bench.readings().get(index);
            if (reading.quantity() == quantity && unscaled.getEntry(index) > 0 && reading.value() > 0) {
                ratios.add(reading.value() / unscaled.getEntry(index));
            }
        }
        List<Double> sorted = ratios.stream().sorted().toList();
        return sorted.isEmpty() ? Optional.empty() : Optional.of(sorted.get(sorted.size() / 2));
    }

    private BenchResult fitted(RealVector start) {
        List<BenchReading> readings = bench.readings();
        RealVector shown = new ArrayRealVector(
                readings.stream().mapToDouble(BenchReading::value).toArray());
        List<StandardUncertainty> uncertainties =
                readings.stream().map(BenchReading::uncertainty).toList();
        Curve curve = new Curve(model.coordinates(), model::readings, shown, uncertainties);
        RobustFit fit = RobustFit.of(curve, start);
        List<Integer> open = fit.open();
        if (!open.isEmpty()) {
            return undetermined(open);
        }
        return fit.trouble()
                .or(() -> beyond(fit.values()))
                .<BenchResult>map(Unfinished::new)
                .orElseGet(() -> new FittedLamp(model, curve, fit, readings));
    }

    private BenchResult undetermined(List<Integer> open) {
        return new Undetermined(
                open.stream().map(index -> new Open(model.free().get(index))).toList());
    }

    private Optional<String> beyond(RealVector values) {
        for (int index = model.shapes(); index < values.getDimension(); index++) {
            if (!(values.getEntry(index) <= MOST_EMISSION)) {
                return Optional.of("the emission that fits is beyond " + MOST_EMISSION);
            }
        }
        return Optional.empty();
    }
}
