package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;

/** That a reading was taken, where and when. */
public record ReadingTaken(long readingId, long pointId, Quantity quantity, Instant at) {}
