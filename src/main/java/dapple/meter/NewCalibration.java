package dapple.meter;

import dapple.light.quantity.Check;
import java.time.Instant;
import java.time.LocalDate;

/**
 * A calibration to record.
 *
 * @param factor true value over displayed value, 0.1 to 9.9
 * @param certificate its number or name
 */
public record NewCalibration(Instant calibratedAt, double factor, LocalDate dueOn, String certificate) {
    public NewCalibration {
        Check.within("calibration factor", factor, 0.1, 9.9, "");
    }
}
