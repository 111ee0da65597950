package dapple.meter;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What a certificate says of a meter. */
record CalibrationForm(
        @NotNull(message = "{calibration.day.needed}") @Nullable
        LocalDate calibratedOn,

        @NotNull(message = "{calibration.correction.needed}") @Nullable
        Correction correction,

        @DecimalMin("0.1")
        @DecimalMax("9.9")
        @Digits(integer = 12, fraction = 4, message = "{calibration.digits}")
        @Nullable
        BigDecimal factor,

        @Nullable RangesTyped ranges,

        @NotNull(message = "{calibration.day.needed}") @Nullable
        LocalDate dueOn,

        @Line @Size(max = 120) String certificate) {

    private static final LocalDate FIRST_DAY = LocalDate.of(1950, 1, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2199, 12, 31);

    /** What a certificate asks for. */
    enum Correction {
        NONE,
        FACTOR,
        RANGES
    }

    CalibrationForm {
        ranges = ranges == null ? RangesTyped.empty() : ranges;
    }

    static CalibrationForm empty() {
        return new CalibrationForm(null, null, null, RangesTyped.empty(), null, "");
    }

    /** What single fields cannot say. */
    void check(LocalDate today, Errors errors) {
        if (Given.of(calibratedOn).isAfter(today)) {
            errors.rejectValue("calibratedOn", "calibration.day.future");
        } else if (Given.of(calibratedOn).isBefore(FIRST_DAY)) {
            errors.rejectValue("calibratedOn", "when.year");
        }
        if (!Given.of(dueOn).isAfter(calibratedOn)) {
            errors.rejectValue("dueOn", "calibration.due.early");
        } else if (Given.of(dueOn).isAfter(LAST_DAY)) {
            errors.rejectValue("dueOn", "when.year");
        }
        if (correction == Correction.FACTOR && factor == null) {
            errors.rejectValue("factor", "calibration.factor.needed");
        } else if (correction != Correction.FACTOR && factor != null) {
            errors.rejectValue("factor", "calibration.factor.none");
        }
        checkRanges(errors);
    }

    private void checkRanges(Errors errors) {
        RangesTyped typed = Given.of(ranges);
        if (correction == Correction.RANGES) {
            typed.check(errors);
        } else if (!typed.isBlank()) {
            errors.rejectValue("ranges.from", "calibration.ranges.none");
        }
    }

    /** It holds from the beginning of its day on, in the time of the site. */
    NewCalibration calibration(ZoneId zone) {
        Instant from = Given.of(calibratedOn).atStartOfDay(zone).toInstant();
        return new NewCalibration(from, factors(), Given.of(dueOn), certificate.strip());
    }

    private CalibrationFactors factors() {
        return switch (Given.of(correction)) {
            case NONE -> CalibrationFactors.of(1);
            case FACTOR -> CalibrationFactors.of(Given.number(factor));
            case RANGES -> Given.of(ranges).factors();
        };
    }
}
