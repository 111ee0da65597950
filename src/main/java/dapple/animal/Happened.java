package dapple.animal;

import java.time.Instant;
import java.util.UUID;

/**
 * When something happened, why, and who says so.
 *
 * @param key made with the form, so that one that is posted twice is stored once
 */
public record Happened(Instant at, String reason, UUID key, long personId) {}
