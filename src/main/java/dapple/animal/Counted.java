package dapple.animal;

import java.time.Instant;
import java.util.Optional;

/**
 * How many animals a record held from an instant on.
 *
 * @param from empty: since the record began
 */
public record Counted(Optional<Instant> from, int count) {}
