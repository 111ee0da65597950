package dapple.animal;

import java.time.Instant;
import java.util.Optional;

/**
 * A record whose stays count for an animal over [from, to).
 *
 * @param animalId its own record, or that of a group that it left
 */
public record Lineage(long animalId, Optional<Instant> from, Optional<Instant> to) {}
