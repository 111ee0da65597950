package dapple.reading;

import java.time.Instant;

/** A note on a visit: what, when, by whom. */
public record VisitNoteFacts(String note, Instant at, long personId) {}
