package dapple.reading;

/** Readings of past times were taken in together. */
public record ReadingsImported(long siteId) {}
