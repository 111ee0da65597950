package dapple.prediction;

import dapple.rig.LampStep;
import dapple.rig.RigStep;
import dapple.site.Occurrence;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A lamp that goes. */
record TakeOutForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    static TakeOutForm empty(LocalDateTime at) {
        return new TakeOutForm(null, null, at, null, null);
    }

    @Override
    public void check(Errors errors) {
        // It says only when.
    }

    @Override
    public RigStep step(long partId) {
        return new LampStep.TakeOut(partId);
    }
}
