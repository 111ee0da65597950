package dapple.round;

import java.time.Instant;

/** Who began a walk first, and when. */
public record Begun(Instant at, long by) {}
