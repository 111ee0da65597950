package dapple.prediction;

import dapple.rig.Ballast;
import dapple.rig.FittingFacts;
import dapple.rig.LampControl;
import dapple.rig.LampStep;
import dapple.rig.RigStep;
import dapple.site.Given;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** Another lamp in the place of one. */
record SwapForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @NotNull(message = "{rig.lamp.needed}") @Nullable Long lampId,
        @Nullable Ballast ballast,
        @Nullable LampControl control,

        @DecimalMin("40") @DecimalMax("100") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal voltagePercent,

        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    /** On the gear that is there. */
    static SwapForm of(FittingFacts fitting, LocalDateTime at) {
        GearFields gear = GearFields.of(fitting.hanging().gear());
        return new SwapForm(null, null, null, gear.ballast(), gear.control(), gear.voltagePercent(), at, null, null);
    }

    private GearFields gearFields() {
        return new GearFields(ballast, control, voltagePercent);
    }

    @Override
    public void check(Errors errors) {
        gearFields().check(errors);
    }

    @Override
    public RigStep step(long partId) {
        return new LampStep.Swap(
                partId, Given.of(lampId), Optional.of(gearFields().gear()));
    }
}
