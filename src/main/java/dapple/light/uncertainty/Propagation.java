package dapple.light.uncertainty;

import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The law of propagation of uncertainty: u_c² = Σ cᵢ² uᵢ² + 2 Σ cᵢ cⱼ u(xᵢ, xⱼ) [jcgm100, eq. 10, 13, 16], with each
 * contribution cᵢ uᵢ taken numerically as Zᵢ = (f(xᵢ + uᵢ) − f(xᵢ − uᵢ))/2. Exact for a straight f; where f bends
 * within one uᵢ it is a first approximation.
 */
public final class Propagation {
    private final RealVector inputs;
    private final RealMatrix covariance;

    /**
     * Inputs with their covariance.
     *
     * @param covariance square, with as many rows as inputs, the squares of the standard uncertainties on its diagonal
     */
    public Propagation(RealVector inputs, RealMatrix covariance) {
        if (covariance.getRowDimension() != inputs.getDimension() || !covariance.isSquare()) {
            throw new IllegalArgumentException("a covariance must have a row and a column for every input");
        }
        this.inputs = inputs.copy();
        this.covariance = covariance.copy();
    }

    /** f of the inputs, with its uncertainty. */
    public UncertainAmount of(ToDoubleFunction<RealVector> function) {
        RealVector slopes = slopes(function);
        double variance = slopes.dotProduct(covariance.operate(slopes));
        return new UncertainAmount(function.applyAsDouble(inputs.copy()), Math.sqrt(Math.max(0, variance)));
    }

    /** Covariance of two functions of the same inputs. */
    public double between(ToDoubleFunction<RealVector> one, ToDoubleFunction<RealVector> other) {
        return slopes(one).dotProduct(covariance.operate(slopes(other)));
    }

    private RealVector slopes(ToDoubleFunction<RealVector> function) {
        RealVector slopes = new ArrayRealVector(inputs.getDimension());
        for (int input = 0; input < inputs.getDimension(); input++) {
            double step = Math.sqrt(covariance.getEntry(input, input));
            if (step > 0) {
                slopes.setEntry(input, (moved(function, input, step) - moved(function, input, -step)) / (2 * step));
            }
        }
        return slopes;
    }

    private double moved(ToDoubleFunction<RealVector> function, int input, double step) {
        RealVector moved = inputs.copy();
        moved.addToEntry(input, step);
        return function.applyAsDouble(moved);
    }
}
