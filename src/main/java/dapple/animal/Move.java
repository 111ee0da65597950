package dapple.animal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Animals and groups go to an enclosure at one instant.
 *
 * @param from where the one who asks took them to be; none: in no enclosure
 */
public record Move(List<Long> animalIds, Optional<Long> from, long to, Instant at, String reason, long personId) {}
