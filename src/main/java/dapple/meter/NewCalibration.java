package dapple.meter;

import java.time.Instant;
import java.time.LocalDate;

/**
 * A calibration to record.
 *
 * @param certificate its number or name
 */
public record NewCalibration(Instant calibratedAt, CalibrationFactors factors, LocalDate dueOn, String certificate) {
    /**
     * With one factor for all amounts.
     *
     * @param factor true value over displayed value, 0.1 to 9.9
     */
    public NewCalibration(Instant calibratedAt, double factor, LocalDate dueOn, String certificate) {
        this(calibratedAt, CalibrationFactors.of(factor), dueOn, certificate);
    }
}
