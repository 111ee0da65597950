package dapple.light.calibration;

import dapple.light.quantity.Interval;
import java.util.ArrayList;
import java.util.List;
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
 *
 * <p>By that fit of everything it is found what does not belong together, and what the readings leave open. A cover that
 * is open, and a meter that read alone, then count as they are stated, so that lamps with them give what was read; their
 * uncertainty goes on to the lamps: Cov = A⁻¹ + S U Sᵀ, A = JᵀJ of what is free, S = A⁻¹ Jᵀ Jₕ, U of what is held.
 */
public final class RigCalibration {
    /** What pulls against its statement settles slowly, by a fifth a pass. */
    private static final int MOST_PASSES = 500;

    /** Share of a row that the others must leave to it so that they can speak of it. */
    private static final double LEAST_REST = 1e-3;

    /** Step of what is held, for its slope. */
    private static final double STEP = 1e-3;

    private final RigTask task;
    private final RigModel model;

    private RigCalibration(RigTask task, List<Integer> held) {
        this.task = task;
        this.model = new RigModel(task, held);
    }

    /** The rig as it is read, or why there is none. Repeatable to the last bit. */
    public static RigResult of(RigTask task) {
        RigCalibration all = new RigCalibration(task, List.of());
        RobustFit fit = all.fit();
        return fit.trouble().<RigResult>map(RigResult.Unfinished::new).orElseGet(() -> all.held(fit));
    }

    private RigResult held(RobustFit whole) {
        RealMatrix jacobian = jacobian(whole);
        List<Integer> open = open(jacobian);
        List<Double> doubts = studentised(whole.residuals(), jacobian);
        List<Integer> held = Stream.concat(open.stream().filter(model::isCover), model.alone())
                .toList();
        RigCalibration rest = new RigCalibration(task, held);
        RobustFit fit = rest.fit();
        return fit.trouble()
                .<RigResult>map(RigResult.Unfinished::new)
                .orElseGet(() -> rest.fitted(fit, new Standing(open, doubts, whole.values())));
    }

    /** What the fit of everything says: parameters that are open, and how far each row is from the others. */
    private record Standing(List<Integer> open, List<Double> doubts, RealVector together) {}

    private RobustFit fit() {
        return RobustFit.of(model.curve(), new ArrayRealVector(model.free().size(), 1), MOST_PASSES);
    }

    /** In standard units, by ln of what is free. */
    private RealMatrix jacobian(RobustFit fit) {
        Curve curve = model.curve();
        return inUnits(
                curve.sigmas(fit.predicted()), curve.jacobian(fit.values().map(Math::log)));
    }

    private static RealMatrix inUnits(RealVector sigmas, RealMatrix slopes) {
        return new DiagonalMatrix(sigmas.map(sigma -> 1 / sigma).toArray()).multiply(slopes);
    }

    private FittedRig fitted(RobustFit fit, Standing standing) {
        Quality quality = Quality.of(fit.residuals(), model.free().size());
        Factors found = new Factors(
                model.all(fit.values()),
                uncertainties(fit, quality.variance()),
                quality.coverageFactor(task.readings().size()),
                standing);
        int covers = task.covers().size();
        int lamps = task.lamps().size();
        return new FittedRig(
                found.of(task.lamps().stream().map(RigTask.Stated::name).toList(), covers),
                found.of(task.covers().stream().map(RigTask.Stated::name).toList(), 0),
                found.of(model.meters().stream().map(RigReading.ByMeter::name).toList(), covers + lamps),
                residuals(found),
                quality);
    }

    /** u(ln f) of every parameter. */
    private List<Double> uncertainties(RobustFit fit, double variance) {
        RealMatrix slopes = jacobian(fit);
        RealMatrix inverse = MatrixUtils.inverse(slopes.transposeMultiply(slopes));
        RealMatrix passedOn = inverse.multiply(slopes.transposeMultiply(ofHeld(fit)));
        List<Double> stated = model.stated();
        List<Double> found = new ArrayList<>(stated);
        List<Integer> held = model.held();
        for (int place = 0; place < model.free().size(); place++) {
            double squares = variance * inverse.getEntry(place, place);
            for (int column = 0; column < held.size(); column++) {
                double part = passedOn.getEntry(place, column) * stated.get(held.get(column));
                squares += part * part;
            }
            found.set(model.free().get(place), Math.sqrt(squares));
        }
        return found;
    }

    /** What the rows of a fit would change by with what is held, in standard units; at least one column, of zeros. */
    private RealMatrix ofHeld(RobustFit fit) {
        List<Integer> held = model.held();
        RealVector sigmas = model.curve().sigmas(fit.predicted());
        RealMatrix slopes = MatrixUtils.createRealMatrix(sigmas.getDimension(), Math.max(1, held.size()));
        RealVector factors = model.all(fit.values());
        for (int column = 0; column < held.size(); column++) {
            RealVector moved = factors.copy();
            moved.setEntry(held.get(column), 1 + STEP);
            RealVector difference =
                    model.amounts(moved).subtract(model.amounts(factors)).mapDivide(STEP);
            slopes.setColumnVector(
                    column, difference.append(new ArrayRealVector(model.free().size(), 0)));
        }
        return inUnits(sigmas, slopes);
    }

    private List<FittedRig.AtReading> residuals(Factors found) {
        return IntStream.range(0, task.readings().size())
                .mapToObj(row -> new FittedRig.AtReading(
                        task.readings().get(row),
                        model.light(task.readings().get(row).seen(), found.values()),
                        model.amount(task.readings().get(row), found.values()),
                        found.standing().doubts().get(row)))
                .toList();
    }

    /** r/√(1 − h), h the leverage of the row: what the rest says of it. A row that nothing else speaks of cannot be doubted. */
    private static List<Double> studentised(RealVector residuals, RealMatrix jacobian) {
        RealMatrix covariance = MatrixUtils.inverse(jacobian.transposeMultiply(jacobian));
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
        List<Integer> covers =
                determinacy.open().stream().filter(model::isCover).toList();
        List<Integer> rest = IntStream.range(0, asked)
                .boxed()
                .filter(index -> !covers.contains(index))
                .toList();
        return Stream.concat(covers.stream(), determinacy.beyond(rest).stream()).toList();
    }

    /** What was found of all parameters. */
    private record Factors(RealVector values, List<Double> relative, double coverage, Standing standing) {
        List<FittedRig.Factor> of(List<String> names, int first) {
            return IntStream.range(0, names.size())
                    .mapToObj(place -> of(names.get(place), first + place))
                    .toList();
        }

        private FittedRig.Factor of(String name, int index) {
            double value = values.getEntry(index);
            double spread = Math.exp(coverage * relative.get(index));
            int readings = standing.doubts().size() - relative.size();
            return new FittedRig.Factor(
                    name,
                    value,
                    relative.get(index),
                    new Interval(value / spread, value * spread),
                    -standing.doubts().get(readings + index),
                    !standing.open().contains(index),
                    standing.together().getEntry(index));
        }
    }
}
