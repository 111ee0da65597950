package dapple.review;

/** A reading over the ceiling was stored. */
record AlarmRaised(long siteId, long readingId) {}
