package dapple.prediction;

import dapple.rig.LampStep;
import dapple.rig.RigStep;
import dapple.site.Given;
import dapple.site.Occurrence;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** Another lamp in the place of one. */
record SwapForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @NotNull(message = "{rig.lamp.needed}") @Nullable Long lampId,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    static SwapForm empty(LocalDateTime at) {
        return new SwapForm(null, null, null, at, null, null);
    }

    @Override
    public void check(Errors errors) {
        // The lamp alone is asked for.
    }

    @Override
    public RigStep step(long partId) {
        return new LampStep.Swap(partId, Given.of(lampId));
    }
}
