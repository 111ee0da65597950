package dapple.prediction;

import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import java.util.List;

/** The limits that light at the points of an enclosure is held against: those of everybody who lives there. */
public record PointLimits(List<OfSpecies> all) {
    public PointLimits {
        all = List.copyOf(all);
    }

    public static PointLimits none() {
        return new PointLimits(List.of());
    }

    public List<OfSpecies> of(Quantity quantity) {
        return all.stream().filter(limit -> limit.quantity() == quantity).toList();
    }

    /** What one species needs of one quantity. */
    public record OfSpecies(String scientificName, Quantity quantity, Limits limits) {}
}
