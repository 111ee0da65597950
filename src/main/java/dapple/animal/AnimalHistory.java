package dapple.animal;

import dapple.species.SpeciesFacts;
import java.util.List;
import java.util.Optional;

/**
 * An animal and where it was.
 *
 * @param end why and since when its record is closed
 * @param stays oldest first; those before it left a group are the group's
 */
public record AnimalHistory(
        AnimalFacts animal, SpeciesFacts species, AnimalState state, Optional<RecordEnd> end, List<StayFacts> stays) {
    public boolean isHere() {
        return end.isEmpty();
    }
}
