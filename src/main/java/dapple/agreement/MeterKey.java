package dapple.agreement;

import dapple.meter.CalibrationInForce;
import dapple.meter.MeterPast;
import java.time.Instant;
import java.util.Optional;

/**
 * A meter since one of its calibrations: with another factor it counts as another meter.
 *
 * @param calibrationId none: before its first
 */
record MeterKey(long meterId, Optional<Long> calibrationId) {
    private static final String NONE = "-";

    static MeterKey at(MeterPast past, Instant at) {
        return new MeterKey(past.meter().id(), past.calibrationAt(at).map(CalibrationInForce::id));
    }

    /** By what {@link #text} gave. */
    static MeterKey read(String text) {
        int slash = text.indexOf('/');
        String calibration = text.substring(slash + 1);
        return new MeterKey(
                Long.parseLong(text.substring(0, slash)),
                calibration.equals(NONE) ? Optional.empty() : Optional.of(Long.valueOf(calibration)));
    }

    String text() {
        return meterId + "/" + calibrationId.map(Object::toString).orElse(NONE);
    }
}
