package dapple.commissioning;

import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.prediction.Predicted;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A point, and what a reading there would tell.
 *
 * @param predicted of what is asked there
 * @param lamps what each lamp gives of the first quantity, the most first
 * @param isWanted whether it tells something of what was changed
 * @param taken what counts of what was read there
 */
public record PlannedPoint(
        PointFacts point, Map<Quantity, Predicted> predicted, List<Share> lamps, boolean isWanted, List<Taken> taken) {
    public PlannedPoint {
        predicted = Map.copyOf(predicted);
        lamps = List.copyOf(lamps);
        taken = List.copyOf(taken);
    }

    public Optional<Taken> of(Quantity quantity) {
        return taken.stream().filter(one -> one.quantity() == quantity).findFirst();
    }

    public boolean isRead() {
        return !taken.isEmpty();
    }

    /**
     * What one lamp gives of the light.
     *
     * @param share 0 to 1
     */
    public record Share(String lamp, double share) {}
}
