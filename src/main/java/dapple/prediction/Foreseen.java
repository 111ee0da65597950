package dapple.prediction;

import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.rig.LeftOut;
import java.util.List;
import java.util.Optional;

/**
 * What a change of a rig would do to the light.
 *
 * @param rows a point and a quantity each, in the order of a visit
 * @param highest at the nearest reachable points, after the change, a quantity each
 * @param excesses what would reach a ceiling, or may
 * @param leftOut what the prediction after the change does not know
 * @param unplaced the points of which nothing is predicted
 */
public record Foreseen(
        List<Row> rows,
        List<Highest> highest,
        List<Excess> excesses,
        List<LeftOut> leftOut,
        List<PointFacts> unplaced) {
    public Foreseen {
        rows = List.copyOf(rows);
        highest = List.copyOf(highest);
        excesses = List.copyOf(excesses);
        leftOut = List.copyOf(leftOut);
        unplaced = List.copyOf(unplaced);
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /**
     * One quantity at one point; empty where it is not predicted.
     *
     * @param limits of those who live there, for this quantity
     */
    public record Row(
            PointFacts point,
            Quantity quantity,
            Optional<Predicted> now,
            Optional<Predicted> then,
            List<PointLimits.OfSpecies> limits) {

        /** Then over now; empty where one is not known, or now is dark. */
        public Optional<Double> ratio() {
            return now.filter(before -> before.amount() > 0)
                    .flatMap(before -> then.map(after -> after.amount() / before.amount()));
        }
    }

    /** The most of a quantity at the nearest reachable points. */
    public record Highest(PointFacts point, Quantity quantity, Predicted predicted) {}

    /**
     * A ceiling that is reached.
     *
     * @param isSure the amount itself reaches it, not the interval alone
     */
    public record Excess(PointFacts point, Predicted predicted, PointLimits.OfSpecies limit, boolean isSure) {}
}
