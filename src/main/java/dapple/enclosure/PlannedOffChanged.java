package dapple.enclosure;

import java.time.Instant;

/** From an instant on the lamps of an enclosure were, or will be, off at other times than was known. */
public record PlannedOffChanged(long siteId, long enclosureId, Instant from) {}
