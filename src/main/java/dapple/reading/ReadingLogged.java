package dapple.reading;

/** A reading was stored and judged. */
public record ReadingLogged(long readingId, long pointId) {}
