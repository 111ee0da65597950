package dapple.confirmation;

import dapple.species.UvZone;

/** The zone that a person confirms for a species. */
public record Confirmed(long speciesId, UvZone zone) {}
