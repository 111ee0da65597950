package dapple.target;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.species.UvZone;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One version of what a species needs.
 *
 * @param id of the version
 * @param number of the version within the species, from 1
 */
public record Target(
        long id, long speciesId, int number, UvZone zone, Instant approvedAt, List<SourcedLimit> sourcedLimits) {

    /** What readings of a quantity are judged by; empty if the target says nothing whole of it. */
    public Optional<Limits> limits(Quantity quantity) {
        Optional<Band> basking = band(quantity, LimitPlace.BASKING);
        Optional<Band> shade = band(quantity, LimitPlace.SHADE);
        Optional<Band> ceiling = band(quantity, LimitPlace.CEILING);
        if (basking.isEmpty() || shade.isEmpty() || ceiling.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Limits(basking.get(), shade.get().high(), ceiling.get().high()));
    }

    private Optional<Band> band(Quantity quantity, LimitPlace place) {
        return sourcedLimits.stream()
                .filter(limit -> limit.quantity() == quantity && limit.place() == place)
                .map(SourcedLimit::band)
                .findFirst();
    }
}
