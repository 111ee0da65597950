package dapple.lamp;

import java.time.Instant;

/** A lamp is about to leave use; whoever knows that it still hangs somewhere throws {@link StillFittedException}. */
public record LampLeavesUse(long siteId, long lampId, Instant at) {}
