package dapple.practice;

import java.time.Instant;

/**
 * Something that happened to a meter.
 *
 * @param note where, by whom; may be empty
 */
public record MeterEventFacts(long meterId, MeterEventKind kind, Instant at, String note, long recordedBy) {}
