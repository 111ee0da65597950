package dapple.animal;

import java.util.Optional;

/**
 * Something that happened to an animal or a group.
 *
 * @param countAfter how many they were then
 * @param related the other record of a split or a merge
 */
public record Chronicled(AnimalEventFacts event, int countAfter, Optional<AnimalFacts> related) {
    /** How the count changed, with its sign; at a recount it was set instead. */
    public boolean isSet() {
        return event.kind() == Happening.RECOUNT;
    }
}
