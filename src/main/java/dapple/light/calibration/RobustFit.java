package dapple.light.calibration;

import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem.Evaluation;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Least squares with Huber's weights: passes of Levenberg and Marquardt's procedure, after each of which the weights and
 * the uncertainties of the readings are made anew from the model, until nothing moves.
 */
final class RobustFit {
    static final int MOST_PASSES = 100;
    private static final int MOST_ITERATIONS = 200;
    private static final int MOST_EVALUATIONS = 1000;

    /** Largest change of a coordinate from one pass to the next that counts as none; far below any uncertainty. */
    private static final double SETTLED = 1e-9;

    /** Smallest step within a pass, far below what counts from one to the next. */
    private static final double STILL = 1e-11;

    private static final double SINGULAR = 1e-14;

    private final Curve curve;
    private final int most;
    private final LevenbergMarquardtOptimizer optimizer = new LevenbergMarquardtOptimizer();

    private RealVector g;
    private int passes;
    private Optional<String> trouble = Optional.empty();

    private RobustFit(Curve curve, RealVector start, int most) {
        this.curve = curve;
        this.most = most;
        this.g = curve.start(start);
    }

    /**
     * Fits, or stops where it got.
     *
     * @param start values of the parameters
     */
    static RobustFit of(Curve curve, RealVector start) {
        return of(curve, start, MOST_PASSES);
    }

    /** The same with another limit of passes. */
    static RobustFit of(Curve curve, RealVector start, int most) {
        RobustFit fit = new RobustFit(curve, start, most);
        try {
            fit.run();
        } catch (MathRuntimeException cause) {
            fit.trouble = Optional.of("the search stopped in pass " + fit.passes + ": " + cause.getMessage());
        }
        return fit;
    }

    private void run() {
        RealVector weights = curve.sigmas(curve.readings()).map(sigma -> 1 / (sigma * sigma));
        double moved = Double.POSITIVE_INFINITY;
        while (passes < 2 || !(moved < SETTLED)) {
            if (passes == most) {
                trouble = Optional.of("nothing settled in " + most + " passes");
                return;
            }
            passes++;
            RealVector next = pass(weights);
            moved = next.subtract(g).getLInfNorm();
            g = next;
            weights = weights();
        }
    }

    private RealVector pass(RealVector weights) {
        LeastSquaresProblem problem = builder(weights)
                .start(curve.free(g))
                .model(point -> Pair.create(curve.predicted(curve.bound(point)), freeJacobian(point)))
                .checker((iteration, before, after) -> isStill(before.getPoint(), after.getPoint()))
                .build();
        return curve.bound(optimizer.optimize(problem).getPoint());
    }

    /** At the end of a range the free number may creep on for ever, and the parameter with it no more. */
    private boolean isStill(RealVector before, RealVector after) {
        return curve.bound(before).getLInfDistance(curve.bound(after)) < STILL;
    }

    private RealMatrix freeJacobian(RealVector free) {
        return curve.jacobian(curve.bound(free))
                .multiply(new DiagonalMatrix(curve.boundSlopes(free).toArray()));
    }

    private LeastSquaresBuilder builder(RealVector weights) {
        return new LeastSquaresBuilder()
                .target(curve.readings())
                .weight(new DiagonalMatrix(weights.toArray()))
                .maxIterations(MOST_ITERATIONS)
                .maxEvaluations(MOST_EVALUATIONS);
    }

    private RealVector weights() {
        RealVector sigmas = curve.sigmas(predicted());
        RealVector squares = sigmas.ebeMultiply(sigmas);
        return residuals().map(Huber::weight).ebeDivide(squares);
    }

    /** Why it did not come to an end, if it did not. */
    Optional<String> trouble() {
        return trouble;
    }

    int passes() {
        return passes;
    }

    RealVector values() {
        return curve.values(g);
    }

    RealVector predicted() {
        return curve.predicted(g);
    }

    /** (reading − predicted)/u, u by what should have been read. */
    RealVector residuals() {
        RealVector predicted = predicted();
        return curve.readings().subtract(predicted).ebeDivide(curve.sigmas(predicted));
    }

    /** Covariance of g by the uncertainties of the readings, as least squares has it. */
    RealMatrix covariance() {
        return evaluation().getCovariances(SINGULAR);
    }

    /**
     * Which parameters the readings leave open; of those that cannot be told apart, the first. None where the search
     * went astray.
     */
    List<Integer> open() {
        RealMatrix jacobian = evaluation().getJacobian();
        return Double.isFinite(jacobian.getFrobeniusNorm())
                ? new Determinacy(
                                jacobian,
                                curve.coordinates().stream()
                                        .map(Coordinate::limit)
                                        .toList())
                        .open()
                : List.of();
    }

    /** What the readings say about g, with all weights by their uncertainties alone. */
    private Evaluation evaluation() {
        RealVector sigmas = curve.sigmas(predicted());
        return builder(sigmas.map(sigma -> 1 / (sigma * sigma)))
                .start(g)
                .model(point -> Pair.create(curve.predicted(point), curve.jacobian(point)))
                .build()
                .evaluate(g);
    }
}
