package dapple.meter;

import java.time.Instant;

/** When, by whom and why a calibration was withdrawn. */
public record Withdrawal(Instant at, long personId, String reason) {}
