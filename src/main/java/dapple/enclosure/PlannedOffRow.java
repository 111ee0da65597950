package dapple.enclosure;

import java.time.Instant;

/** A planned-off time as those see it who arrange it. */
record PlannedOffRow(
        long id, PlannedOffTime time, boolean calledOff, boolean open, Instant recordedAt, long recordedBy) {}
