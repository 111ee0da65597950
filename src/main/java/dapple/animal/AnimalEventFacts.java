package dapple.animal;

import java.time.Instant;
import java.util.Optional;

/**
 * Something that happened to an animal or a group.
 *
 * @param number the count at a recount, else how many more or fewer
 * @param relatedId the other record of a split or a merge
 */
public record AnimalEventFacts(
        long id,
        Happening kind,
        Instant at,
        int number,
        Optional<Long> relatedId,
        String reason,
        Instant recordedAt,
        long personId) {}
