package dapple.drawing;

import java.time.Instant;

/** Something after which readings are not to be compared with those before, such as a new tube or another mesh. */
public record StripEvent(Instant at, String words) {}
