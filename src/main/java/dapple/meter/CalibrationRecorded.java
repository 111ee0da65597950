package dapple.meter;

import java.time.Instant;

/** A calibration was entered that holds from an instant on, maybe long past. */
public record CalibrationRecorded(long siteId, long meterId, Instant from) {}
