package dapple.copying;

import dapple.site.Given;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * Copies of an enclosure.
 *
 * @param key of this entry: a form sent twice makes nothing twice
 * @param seen the original as the form showed it
 * @param codes one a line
 * @param burnHours of used lamps, h
 */
record CopyForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable String seen,
        @Size(max = 2000) @Nullable String codes,
        @NotNull @Nullable Long roomId,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @NotNull @Nullable LampsOfCopies lamps,

        @DecimalMin("0") @DecimalMax("999999") @Nullable BigDecimal burnHours) {

    static CopyForm empty(long roomId, LocalDateTime now) {
        return new CopyForm(null, null, "", roomId, now, null, LampsOfCopies.NEW, null);
    }

    TypedCodes typed() {
        return TypedCodes.of(Optional.ofNullable(codes).orElse(""));
    }

    /** What no field says alone. */
    void check(Original original, Errors errors) {
        typed().check(original.hasLamps() && Given.of(lamps).hang(), errors);
        if (!original.hasLamps()) {
            return;
        }
        if (lamps == LampsOfCopies.USED && burnHours == null) {
            errors.rejectValue("burnHours", "copying.burn-hours.needed");
        }
        if (lamps != LampsOfCopies.USED && burnHours != null) {
            errors.rejectValue("burnHours", "copying.burn-hours.not-needed");
        }
        if (lamps == LampsOfCopies.LATER && !original.fitsADraft()) {
            errors.rejectValue("lamps", "copying.lamps.too-many");
        }
    }

    CopyPlan plan(Instant since, String likeness) {
        double hours = burnHours == null ? 0 : burnHours.doubleValue();
        return new CopyPlan(typed().codes(), Given.of(roomId), since, Given.of(lamps), hours, likeness);
    }
}
