package dapple.enclosure;

import java.time.Instant;

/** An enclosure is about to leave use; whoever knows that it is lived in throws {@link LivedInException}. */
public record EnclosureLeavesUse(long siteId, long enclosureId, Instant at) {}
