package dapple.reading;

import java.util.UUID;

/** A point that was not read, and why, to record. */
public record Unread(UUID key, VisitPlace place, Outcome outcome) {}
