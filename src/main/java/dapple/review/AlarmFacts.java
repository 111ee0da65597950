package dapple.review;

import java.time.Instant;

/** A reading over the ceiling that nobody has seen yet. */
public record AlarmFacts(
        long id, long enclosureId, String enclosure, String point, String place, long readingId, Instant takenAt) {}
