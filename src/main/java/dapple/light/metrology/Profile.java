package dapple.light.metrology;

import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Least squares for one change of gains more, beside those that are fitted anyway. */
final class Profile {
    private final GainInformation information;
    private final List<double[]> others;
    private final DecompositionSolver solver;
    private final RealVector solution;

    /**
     * @param others shapes that are fitted anyway
     * @param precisions of each, before any reading, above 0
     */
    Profile(GainInformation information, List<double[]> others, List<Double> precisions) {
        this.information = information;
        this.others = others;
        int size = others.size();
        RealMatrix normal = MatrixUtils.createRealMatrix(size, size);
        RealVector right = new ArrayRealVector(size);
        for (int i = 0; i < size; i++) {
            normal.setRow(i, cross(information.times(others.get(i))));
            normal.addToEntry(i, i, precisions.get(i));
            right.setEntry(i, information.rightTimes(others.get(i)));
        }
        solver = new CholeskyDecomposition(normal, 1e-6, 1e-12).getSolver();
        solution = solver.solve(right);
    }

    private double[] cross(double[] image) {
        return others.stream()
                .mapToDouble(other -> GainInformation.dot(image, other))
                .toArray();
    }

    /** The gains by the shapes that are fitted anyway, as far as wanted. */
    double[] gains(int first) {
        double[] gains = new double[information.width()];
        for (int i = 0; i < first; i++) {
            for (int column = 0; column < gains.length; column++) {
                gains[column] += solution.getEntry(i) * others.get(i)[column];
            }
        }
        return gains;
    }

    Estimate of(Shape shape) {
        double[] gains = shape.gains(information);
        return of(shape, gains, information.times(gains));
    }

    /** The same with the product of the information and the shape, where it is at hand. */
    Estimate of(Shape shape, double[] gains, double[] image) {
        RealVector cross = new ArrayRealVector(cross(image), false);
        double weight = GainInformation.dot(image, gains) - cross.dotProduct(solver.solve(cross));
        double score = information.rightTimes(gains) - cross.dotProduct(solution);
        return weight > LEAST_WEIGHT
                ? Estimate.of(shape, score / weight, 1 / Math.sqrt(weight))
                : Estimate.of(shape, 0, Double.POSITIVE_INFINITY);
    }

    /** Below it a change is not determined at all: a standard error of 10 in ln. */
    private static final double LEAST_WEIGHT = 0.01;
}
