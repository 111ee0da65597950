package dapple.practice;

import java.time.Instant;
import java.util.UUID;

/**
 * By whom something was written down.
 *
 * @param key made with the form: the same key is stored once, however often it is sent
 */
public record Entered(long siteId, long meterId, long personId, Instant at, UUID key) {}
