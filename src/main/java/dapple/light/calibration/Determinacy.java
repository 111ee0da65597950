package dapple.light.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Which parameters readings leave open. Each coordinate gets a faint prior of standard deviation 10, so that what the
 * readings say nothing about comes out near 10 and everything can be inverted; one whose standard uncertainty is beyond
 * its limit is open. The first of these is named and taken as known, until the rest is determined: of parameters that
 * cannot be told apart one is named, not all.
 */
final class Determinacy {
    private static final double FAINT = 0.01;

    private final RealMatrix jacobian;
    private final List<Double> limits;

    /**
     * Of a curve at its fit.
     *
     * @param jacobian of the readings in standard units by the coordinates
     * @param limits largest standard uncertainty of each coordinate that counts as determined
     */
    Determinacy(RealMatrix jacobian, List<Double> limits) {
        this.jacobian = jacobian;
        this.limits = limits;
    }

    /** Indices of the parameters that stay open. */
    List<Integer> open() {
        List<Integer> known = new ArrayList<>();
        List<Integer> rest =
                new ArrayList<>(IntStream.range(0, limits.size()).boxed().toList());
        for (Optional<Integer> first = first(rest); first.isPresent(); first = first(rest)) {
            known.add(first.get());
            rest.remove(first.get());
        }
        return known;
    }

    private Optional<Integer> first(List<Integer> rest) {
        return beyond(rest).stream().findFirst();
    }

    /** Which of these are beyond their limit while all of them are asked for, and the others known. */
    List<Integer> beyond(List<Integer> asked) {
        if (asked.isEmpty()) {
            return List.of();
        }
        RealMatrix variances = variances(asked);
        return IntStream.range(0, asked.size())
                .filter(place -> !(Math.sqrt(variances.getEntry(place, place)) <= limits.get(asked.get(place))))
                .mapToObj(asked::get)
                .toList();
    }

    private RealMatrix variances(List<Integer> rest) {
        int[] columns = rest.stream().mapToInt(index -> index).toArray();
        int[] rows = IntStream.range(0, jacobian.getRowDimension()).toArray();
        RealMatrix chosen = jacobian.getSubMatrix(rows, columns);
        RealMatrix information = chosen.transposeMultiply(chosen)
                .add(MatrixUtils.createRealIdentityMatrix(rest.size()).scalarMultiply(FAINT));
        return MatrixUtils.inverse(information);
    }
}
