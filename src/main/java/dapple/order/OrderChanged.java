package dapple.order;

import java.time.Instant;

/** What one animal in an enclosure is judged by is ordered otherwise since an instant. */
public record OrderChanged(long siteId, long animalId, long enclosureId, Instant from) {}
