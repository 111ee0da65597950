package dapple.prediction;

import dapple.rig.CoverFacts;
import dapple.rig.CoverStep;
import dapple.rig.RigStep;
import dapple.site.Given;
import dapple.site.Occurrence;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** How many layers of a mesh there are. */
record LayersForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @NotNull @Min(1) @Max(100) @Nullable Integer layers,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    static LayersForm of(CoverFacts cover, LocalDateTime at) {
        return new LayersForm(null, null, cover.cover().layers(), at, null, null);
    }

    @Override
    public void check(Errors errors) {
        // One number is asked for.
    }

    @Override
    public RigStep step(long partId) {
        return new CoverStep.SetLayers(partId, Given.of(layers));
    }
}
