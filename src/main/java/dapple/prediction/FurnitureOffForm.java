package dapple.prediction;

import dapple.rig.FurnitureStep;
import dapple.rig.RigStep;
import dapple.site.Occurrence;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A piece of furniture that goes. */
record FurnitureOffForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    static FurnitureOffForm empty(LocalDateTime at) {
        return new FurnitureOffForm(null, null, at, null, null);
    }

    @Override
    public void check(Errors errors) {
        // It says only when.
    }

    @Override
    public RigStep step(long partId) {
        return new FurnitureStep.Remove(partId);
    }
}
