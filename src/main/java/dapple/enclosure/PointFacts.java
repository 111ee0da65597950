package dapple.enclosure;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A measuring point as other features see it.
 *
 * @param quantities what is asked there, the UV index first if it is; at least one
 */
public record PointFacts(
        long id,
        long enclosureId,
        String code,
        String place,
        PointRole role,
        Facing facing,
        Optional<Position> position,
        List<Quantity> quantities,
        Served served) {

    /** A point that serves some species; none: all that live there. */
    public PointFacts(
            long id,
            long enclosureId,
            String code,
            String place,
            PointRole role,
            Facing facing,
            Optional<Position> position,
            List<Quantity> quantities,
            Set<Long> speciesIds) {
        this(id, enclosureId, code, place, role, facing, position, quantities, Served.species(speciesIds));
    }

    /** The same point at another place. */
    public PointFacts tried(Position other) {
        return new PointFacts(id, enclosureId, code, place, role, facing, Optional.of(other), quantities, served);
    }

    /** Whether it serves an animal, by its species or alone. */
    public boolean serves(long speciesId, long animalId) {
        return served.holds(speciesId, animalId);
    }

    /** What of it can be measured; where nothing can, the first, so that this can be noted. */
    public List<Quantity> measurableBy(Set<Quantity> meters) {
        List<Quantity> measurable = quantities.stream().filter(meters::contains).toList();
        return measurable.isEmpty() ? List.of(firstQuantity()) : measurable;
    }

    /** What the point is read for first of all: the UV index where it is asked. */
    public Quantity firstQuantity() {
        return quantities.get(0);
    }
}
