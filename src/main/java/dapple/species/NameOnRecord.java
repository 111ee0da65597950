package dapple.species;

import java.time.Instant;
import java.util.OptionalLong;

/**
 * A name that a species had from an instant on.
 *
 * @param givenBy the person who gave it; none: the program itself
 */
public record NameOnRecord(SpeciesName name, Instant since, OptionalLong givenBy) {}
