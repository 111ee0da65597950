package dapple.rig;

import java.time.Instant;

/** The rig of an enclosure is another one since an instant, which may be long past: readings since then are judged anew. */
public record RigChanged(long siteId, long enclosureId, Instant at) {}
