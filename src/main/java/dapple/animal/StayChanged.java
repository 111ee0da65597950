package dapple.animal;

import java.time.Instant;

/** Who lives in an enclosure is said otherwise since an instant: readings since then may be judged otherwise. */
public record StayChanged(long siteId, long enclosureId, Instant from) {}
