package dapple.prediction;

import dapple.animal.AnimalFacts;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;

/** The limits that light at the points of an enclosure is held against: those of everybody who lives there. */
public record PointLimits(List<OfSpecies> all) {
    public PointLimits {
        all = List.copyOf(all);
    }

    public static PointLimits none() {
        return new PointLimits(List.of());
    }

    /** Those of a quantity for whom the point is meant. */
    public List<OfSpecies> of(Quantity quantity, PointFacts point) {
        return all.stream()
                .filter(limit -> limit.quantity() == quantity && limit.isServedAt(point))
                .toList();
    }

    /** The strictest ceiling of those who can be at a point; none where a face is held, as no animal is there. */
    public Optional<Double> ceiling(Quantity quantity, PointFacts point) {
        return point.role() == PointRole.KEEPER
                ? Optional.empty()
                : of(quantity, point).stream()
                        .map(OfSpecies::limits)
                        .filter(Limits::hasCeiling)
                        .map(Limits::ceiling)
                        .min(Double::compare);
    }

    /**
     * What one species needs of one quantity.
     *
     * @param animals those who live there and need it
     */
    public record OfSpecies(String scientificName, Quantity quantity, Limits limits, List<AnimalFacts> animals) {
        public OfSpecies {
            animals = List.copyOf(animals);
        }

        boolean isServedAt(PointFacts point) {
            return animals.stream().anyMatch(animal -> point.serves(animal.speciesId(), animal.id()));
        }
    }
}
