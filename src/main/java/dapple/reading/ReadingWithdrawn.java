package dapple.reading;

/** A reading was withdrawn; what stood before it stands again. */
public record ReadingWithdrawn(long readingId, long pointId) {}
