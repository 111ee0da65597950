package dapple.light.calibration;

import dapple.light.uncertainty.StandardUncertainty;
import java.util.List;
import java.util.function.UnaryOperator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Readings, and a model of them with some parameters, each counted by its coordinate g. */
final class Curve {
    /** Step of g for differences: their error is about its square; any noise of the model is divided by it. */
    private static final double STEP = 1e-3;

    /** Smallest uncertainty of a reading, as a share of its relative one, where the model says next to nothing. */
    private static final double LEAST = 1e-3;

    private final List<Coordinate> coordinates;
    private final UnaryOperator<RealVector> model;
    private final RealVector readings;
    private final List<StandardUncertainty> uncertainties;

    /**
     * A curve.
     *
     * @param model what would be read with these values of the parameters
     */
    Curve(
            List<Coordinate> coordinates,
            UnaryOperator<RealVector> model,
            RealVector readings,
            List<StandardUncertainty> uncertainties) {
        this.coordinates = List.copyOf(coordinates);
        this.model = model;
        this.readings = readings;
        this.uncertainties = List.copyOf(uncertainties);
    }

    List<Coordinate> coordinates() {
        return coordinates;
    }

    RealVector readings() {
        return readings;
    }

    RealVector values(RealVector g) {
        return each(g, Coordinate::value);
    }

    /** g where a fit may start. */
    RealVector start(RealVector values) {
        return bound(free(each(values, Coordinate::of)));
    }

    RealVector free(RealVector g) {
        return each(g, Coordinate::free);
    }

    RealVector bound(RealVector free) {
        return each(free, Coordinate::bound);
    }

    /** dg/dfree. */
    RealVector boundSlopes(RealVector free) {
        return each(free, Coordinate::boundSlope);
    }

    RealVector predicted(RealVector g) {
        return model.apply(values(g));
    }

    /** Rows of readings, columns ∂/∂g by differences. */
    RealMatrix jacobian(RealVector g) {
        RealMatrix jacobian = new Array2DRowRealMatrix(readings.getDimension(), g.getDimension());
        for (int column = 0; column < g.getDimension(); column++) {
            Coordinate coordinate = coordinates.get(column);
            double high = within(coordinate, g.getEntry(column) + STEP);
            double low = within(coordinate, g.getEntry(column) - STEP);
            RealVector difference = moved(g, column, high).subtract(moved(g, column, low));
            jacobian.setColumnVector(column, difference.mapDivide(high - low));
        }
        return jacobian;
    }

    private static double within(Coordinate coordinate, double g) {
        return coordinate.of(coordinate.value(g));
    }

    private RealVector moved(RealVector g, int column, double to) {
        RealVector moved = g.copy();
        moved.setEntry(column, to);
        return predicted(moved);
    }

    /**
     * Standard uncertainties. By what was read to begin with; then by what should have been read, so that what was read
     * too low does not count for more.
     */
    RealVector sigmas(RealVector amounts) {
        RealVector sigmas = new ArrayRealVector(readings.getDimension());
        for (int index = 0; index < readings.getDimension(); index++) {
            StandardUncertainty uncertainty = uncertainties.get(index);
            double least = LEAST * uncertainty.relative() * readings.getEntry(index);
            sigmas.setEntry(index, Math.hypot(uncertainty.at(amounts.getEntry(index)), least));
        }
        return sigmas;
    }

    private RealVector each(RealVector from, Change change) {
        RealVector changed = new ArrayRealVector(from.getDimension());
        for (int index = 0; index < from.getDimension(); index++) {
            changed.setEntry(index, change.of(coordinates.get(index), from.getEntry(index)));
        }
        return changed;
    }

    private interface Change {
        double of(Coordinate coordinate, double number);
    }
}
