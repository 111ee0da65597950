package dapple.target;

import java.time.Instant;

/** A first target was approved that counts for readings taken before, from an instant on. */
public record EarlierReadingsIncluded(long siteId, long speciesId, Instant from) {}
