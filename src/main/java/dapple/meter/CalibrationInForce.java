package dapple.meter;

import java.time.LocalDate;

/** The calibration that a reading is corrected by. */
public record CalibrationInForce(
        long id, long meterId, CalibrationFactors factors, LocalDate dueOn, String certificate) {
    /** True value over displayed value where the meter showed an amount. */
    public double factorAt(double displayed) {
        return factors.at(displayed);
    }
}
