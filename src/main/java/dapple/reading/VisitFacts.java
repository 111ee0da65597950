package dapple.reading;

import java.util.UUID;

/** A visit as later features hang things on it. */
public record VisitFacts(long id, UUID key, long enclosureId) {}
