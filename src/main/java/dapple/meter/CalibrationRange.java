package dapple.meter;

import jakarta.persistence.Embeddable;

/** One range of a calibration, as it is stored. */
@Embeddable
class CalibrationRange {
    private double upTo;
    private double factor;

    protected CalibrationRange() {}

    CalibrationRange(RangeFactor range) {
        this.upTo = range.upTo();
        this.factor = range.factor();
    }

    RangeFactor factor() {
        return new RangeFactor(upTo, factor);
    }
}
