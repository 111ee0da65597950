package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.RigStep;
import dapple.site.Given;
import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A lamp that comes. */
record FitForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @NotNull(message = "{rig.lamp.needed}") @Nullable Long lampId,
        @Line @Size(max = 80) String place,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal xMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal yMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal zMetres,

        @DecimalMin("0") @DecimalMax("180") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal lean,

        @DecimalMin("-360") @DecimalMax("360") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal leanTo,

        @DecimalMin("-360") @DecimalMax("360") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal lengthTo,

        @Nullable LocalTime onAt,
        @Nullable LocalTime offAt,
        @Nullable Long circuitId,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    static FitForm empty(LocalDateTime at) {
        return new FitForm(null, null, null, "", null, null, null, null, null, null, null, null, null, at, null, null);
    }

    private MountFields mountFields() {
        return new MountFields(xMetres, yMetres, zMetres, lean, leanTo, lengthTo);
    }

    private TimerFields timerFields() {
        return new TimerFields(onAt, offAt);
    }

    @Override
    public void check(Errors errors) {
        mountFields().check(errors);
        timerFields().check(errors);
    }

    @Override
    public void checkIn(InnerSize size, Errors errors) {
        mountFields().checkIn(size, errors);
    }

    @Override
    public RigStep step(long partId) {
        return new LampStep.Fit(
                Given.of(lampId),
                new Hanging(
                        place.strip(), mountFields().mount(), timerFields().timer(), Optional.ofNullable(circuitId)));
    }
}
