package dapple.meter;

import java.time.LocalDate;

/**
 * The calibration that a reading is corrected by.
 *
 * @param factor true value over displayed value
 */
public record CalibrationInForce(long id, long meterId, double factor, LocalDate dueOn, String certificate) {}
