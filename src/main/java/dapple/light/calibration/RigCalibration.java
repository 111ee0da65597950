package dapple.light.calibration;

import dapple.light.quantity.Interval;
import dapple.light.uncertainty.StandardUncertainty;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Fits all lamps and covers of an enclosure at once to what was read there: yᵢ = m · Σₗ Eᵢₗ · fₗ · Πc (1 − τᵢₗc + τᵢₗc · Fc),
 * E the stated light, τ the share that comes through a cover, f, F and m what lamps, covers and meters give over what is
 * stated of them. What is stated counts as one more reading of each, ln f = 0 with the stated uncertainty, and so does the
 * meter's calibration: so lamps that the readings cannot tell apart share what is missing as their statements allow.
 */
public final class RigCalibration {
    /** What pulls against its statement settles slowly, by a fifth a pass. */
    private static final int MOST_PASSES = 500;

    /** Share of a row that the others must leave to it so that they can speak of it. */
    private static final double LEAST_REST = 1e-3;

    /** A meter without a shared uncertainty counts as known to a part in a million. */
    private static final double LEAST_SHARED = 1e-6;

    private final RigTask task;
    private final List<RigReading.ByMeter> meters;
    private final int parameters;

    private RigCalibration(RigTask task) {
        this.task = task;
        this.meters = task.meters();
        this.parameters = task.covers().size() + task.lamps().size() + meters.size();
    }

    /** The rig as it is read, or why there is none. Repeatable to the last bit. */
    public static RigResult of(RigTask task) {
        return new RigCalibration(task).result();
    }

    private RigResult result() {
        List<Coordinate> coordinates = IntStream.range(0, parameters)
                .<Coordinate>mapToObj(index -> new Coordinate.Logarithm(0))
                .toList();
        Curve curve = new Curve(coordinates, this::model, shown(), uncertainties());
        RobustFit fit = RobustFit.of(curve, new ArrayRealVector(parameters, 1), MOST_PASSES);
        return fit.trouble().<RigResult>map(RigResult.Unfinished::new).orElseGet(() -> fitted(curve, fit));
    }

    /** Where covers, lamps and meters begin: covers first, so that of a cover and its lamps the cover is taken as known. */
    private int lamp(int index) {
        return task.covers().size() + index;
    }

    private int meter(RigReading reading) {
        return task.covers().size() + task.lamps().size() + meters.indexOf(reading.meter());
    }

    /** The readings; then ln of each factor, of which 0 is what is stated. */
    private RealVector model(RealVector factors) {
        RealVector model = new ArrayRealVector(task.readings().size() + parameters);
        for (int row = 0; row < task.readings().size(); row++) {
            model.setEntry(row, amount(task.readings().get(row), factors));
        }
        for (int index = 0; index < parameters; index++) {
            model.setEntry(task.readings().size() + index, Math.log(factors.getEntry(index)));
        }
        return model;
    }

    private double amount(RigReading reading, RealVector factors) {
        return factors.getEntry(meter(reading)) * light(reading.seen(), factors);
    }

    private double light(SeenLight seen, RealVector factors) {
        double sum = 0;
        for (int lamp = 0; lamp < task.lamps().size(); lamp++) {
            double light = seen.byLamp().get(lamp) * factors.getEntry(lamp(lamp));
            for (int cover = 0; cover < task.covers().size(); cover++) {
                double share = seen.through().get(lamp).get(cover);
                light *= 1 - share + share * factors.getEntry(cover);
            }
            sum += light;
        }
        return sum;
    }

    private RealVector shown() {
        return new ArrayRealVector(DoubleStream.concat(
                        task.readings().stream().mapToDouble(RigReading::value),
                        DoubleStream.generate(() -> 0).limit(parameters))
                .toArray());
    }

    private List<StandardUncertainty> uncertainties() {
        return Stream.concat(
                        task.readings().stream().map(RigReading::uncertainty),
                        stated().map(StandardUncertainty::absolute))
                .toList();
    }

    private Stream<Double> stated() {
        return Stream.of(
                        task.covers().stream().map(RigTask.Stated::relative),
                        task.lamps().stream().map(RigTask.Stated::relative),
                        meters.stream().map(meter -> Math.max(LEAST_SHARED, meter.shared())))
                .flatMap(each -> each);
    }

    private FittedRig fitted(Curve curve, RobustFit fit) {
        RealVector factors = fit.values();
        RealVector predicted = fit.predicted();
        RealMatrix jacobian = new DiagonalMatrix(
                        curve.sigmas(predicted).map(sigma -> 1 / sigma).toArray())
                .multiply(curve.jacobian(factors.map(Math::log)));
        RealMatrix covariance = MatrixUtils.inverse(jacobian.transposeMultiply(jacobian));
        Quality quality = Quality.of(fit.residuals(), parameters);
        List<Double> doubts = studentised(fit.residuals(), jacobian, covariance);
        Factors found = new Factors(factors, covariance.scalarMultiply(quality.variance()), factor(quality), doubts);
        List<Integer> open = open(jacobian);
        int covers = task.covers().size();
        int lamps = task.lamps().size();
        return new FittedRig(
                found.of(task.lamps().stream().map(RigTask.Stated::name).toList(), covers, open),
                found.of(task.covers().stream().map(RigTask.Stated::name).toList(), 0, open),
                found.of(meters.stream().map(RigReading.ByMeter::name).toList(), covers + lamps, open),
                residuals(factors, doubts),
                quality);
    }

    private double factor(Quality quality) {
        return quality.coverageFactor(task.readings().size());
    }

    private List<FittedRig.AtReading> residuals(RealVector factors, List<Double> doubts) {
        return IntStream.range(0, task.readings().size())
                .mapToObj(row -> new FittedRig.AtReading(
                        task.readings().get(row),
                        light(task.readings().get(row).seen(), factors),
                        amount(task.readings().get(row), factors),
                        doubts.get(row)))
                .toList();
    }

    /** r/√(1 − h), h the leverage of the row: what the rest says of it. A row that nothing else speaks of cannot be doubted. */
    private static List<Double> studentised(RealVector residuals, RealMatrix jacobian, RealMatrix covariance) {
        List<Double> found = new ArrayList<>();
        for (int row = 0; row < residuals.getDimension(); row++) {
            RealVector slopes = jacobian.getRowVector(row);
            double rest = 1 - slopes.dotProduct(covariance.operate(slopes));
            found.add(rest > LEAST_REST ? residuals.getEntry(row) / Math.sqrt(rest) : 0);
        }
        return found;
    }

    /** Covers and lamps that the readings alone leave open, the meters taken as known. */
    private List<Integer> open(RealMatrix jacobian) {
        int asked = task.covers().size() + task.lamps().size();
        RealMatrix alone = jacobian.getSubMatrix(0, task.readings().size() - 1, 0, asked - 1);
        List<Double> limits =
                IntStream.range(0, asked).mapToObj(index -> FittedRig.TOLD).toList();
        Determinacy determinacy = new Determinacy(alone, limits);
        List<Integer> covers = determinacy.open().stream()
                .filter(index -> index < task.covers().size())
                .toList();
        List<Integer> rest = IntStream.range(0, asked)
                .boxed()
                .filter(index -> !covers.contains(index))
                .toList();
        return Stream.concat(covers.stream(), determinacy.beyond(rest).stream()).toList();
    }

    /** What was found of all parameters, in the coordinates of the fit. */
    private record Factors(RealVector values, RealMatrix covariance, double coverage, List<Double> doubts) {
        List<FittedRig.Factor> of(List<String> names, int first, List<Integer> open) {
            ToDoubleFunction<Integer> u = index -> Math.sqrt(covariance.getEntry(index, index));
            int readings = doubts.size() - values.getDimension();
            return IntStream.range(0, names.size())
                    .mapToObj(place -> {
                        int index = first + place;
                        double value = values.getEntry(index);
                        double spread = Math.exp(coverage * u.applyAsDouble(index));
                        return new FittedRig.Factor(
                                names.get(place),
                                value,
                                u.applyAsDouble(index),
                                new Interval(value / spread, value * spread),
                                -doubts.get(readings + index),
                                !open.contains(index));
                    })
                    .toList();
        }
    }
}
