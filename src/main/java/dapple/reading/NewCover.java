package dapple.reading;

import java.time.Instant;
import java.util.UUID;

/**
 * How the cover was at a visit, to keep.
 *
 * @param key made where it was said: the same key is stored once, however often it is sent
 */
public record NewCover(UUID key, UUID visitKey, long enclosureId, CoverSaid cover, Instant saidAt) {}
