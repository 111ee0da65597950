package dapple.light.calibration;

import dapple.light.source.Lamp;
import dapple.light.uncertainty.Propagation;
import dapple.light.uncertainty.UncertainAmount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** A lamp as its readings have it, and how sure that is. */
public final class FittedLamp implements BenchResult {
    private final BenchModel model;
    private final List<Coordinate> coordinates;
    private final RealVector values;
    private final RealMatrix covariance;
    private final double coverageFactor;
    private final List<Residual> residuals;
    private final Quality quality;
    private final int passes;

    FittedLamp(BenchModel model, Curve curve, RobustFit fit, List<BenchReading> readings) {
        this.model = model;
        this.coordinates = curve.coordinates();
        this.values = fit.values();
        this.residuals = residuals(readings, fit.predicted(), fit.residuals());
        int free = values.getDimension();
        this.quality = Quality.of(fit.residuals(), free);
        this.covariance = fit.covariance().scalarMultiply(quality.variance());
        this.coverageFactor = quality.coverageFactor(readings.size() - free);
        this.passes = fit.passes();
    }

    private static List<Residual> residuals(List<BenchReading> readings, RealVector predicted, RealVector inUnits) {
        List<Residual> residuals = new ArrayList<>();
        for (int index = 0; index < readings.size(); index++) {
            residuals.add(new Residual(readings.get(index), predicted.getEntry(index), inUnits.getEntry(index)));
        }
        return List.copyOf(residuals);
    }

    /** The lamp, with what was held as it was. */
    public Lamp lamp() {
        return model.lamp(values);
    }

    /** What was free, the shape first. */
    public List<FittedParameter> parameters() {
        List<FittedParameter> parameters = new ArrayList<>();
        for (int index = 0; index < values.getDimension(); index++) {
            double value = values.getEntry(index);
            double uncertainty = Math.sqrt(covariance.getEntry(index, index));
            Coordinate coordinate = coordinates.get(index);
            parameters.add(new FittedParameter(
                    model.free().get(index),
                    value,
                    uncertainty * coordinate.slope(value),
                    coordinate.around(value, coverageFactor * uncertainty)));
        }
        return parameters;
    }

    public Optional<FittedParameter> parameter(Parameter parameter) {
        return parameters().stream()
                .filter(found -> found.parameter().equals(parameter))
                .findFirst();
    }

    /** Covariance of two parameters, in the product of their units; 0 with one that was held. */
    public double covariance(Parameter one, Parameter other) {
        int row = model.free().indexOf(one);
        int column = model.free().indexOf(other);
        return row < 0 || column < 0 ? 0 : slope(row) * slope(column) * covariance.getEntry(row, column);
    }

    private double slope(int index) {
        return coordinates.get(index).slope(values.getEntry(index));
    }

    /** Every reading, in the order given. */
    public List<Residual> residuals() {
        return residuals;
    }

    /** The readings that do not fit. They are in the fit all the same, with little weight. */
    public List<Residual> misfits() {
        return residuals.stream().filter(residual -> !residual.fits()).toList();
    }

    public Quality quality() {
        return quality;
    }

    public int passes() {
        return passes;
    }

    /**
     * An amount that follows from the lamp, such as its light somewhere in a scene, with the uncertainty of the fit
     * alone.
     */
    public UncertainAmount propagate(ToDoubleFunction<Lamp> amount) {
        RealVector g = new ArrayRealVector(values.getDimension());
        for (int index = 0; index < g.getDimension(); index++) {
            g.setEntry(index, coordinates.get(index).of(values.getEntry(index)));
        }
        return new Propagation(g, covariance).of(moved -> amount.applyAsDouble(lamp(moved)));
    }

    private Lamp lamp(RealVector g) {
        RealVector moved = new ArrayRealVector(g.getDimension());
        for (int index = 0; index < g.getDimension(); index++) {
            moved.setEntry(index, coordinates.get(index).value(g.getEntry(index)));
        }
        return model.lamp(moved);
    }
}
