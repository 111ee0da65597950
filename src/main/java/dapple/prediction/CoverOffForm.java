package dapple.prediction;

import dapple.rig.CoverStep;
import dapple.rig.RigStep;
import dapple.site.Occurrence;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A cover that goes. */
record CoverOffForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    static CoverOffForm empty(LocalDateTime at) {
        return new CoverOffForm(null, null, at, null, null);
    }

    @Override
    public void check(Errors errors) {
        // It says only when.
    }

    @Override
    public RigStep step(long partId) {
        return new CoverStep.TakeOff(partId);
    }
}
