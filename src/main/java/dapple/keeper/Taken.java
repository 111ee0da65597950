package dapple.keeper;

import java.time.Instant;
import java.util.UUID;

/**
 * That somebody read a meter.
 *
 * @param key of the entry, by which it is kept once
 */
public record Taken(long siteId, long personId, UUID key, Instant at) {}
