package dapple.animal;

import java.time.Instant;

/** An animal comes to an enclosure, from wherever it is now; who says so. */
public record Arrival(long animalId, long enclosureId, Instant at, long personId) {}
