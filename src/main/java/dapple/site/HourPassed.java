package dapple.site;

/** Told soon after the start and every hour: what is kept for a time only may go now. */
public record HourPassed() {}
