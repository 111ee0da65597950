package dapple.prediction;

import dapple.rig.Furniture;
import dapple.rig.FurnitureKind;
import dapple.rig.FurnitureStep;
import dapple.rig.RigStep;
import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A thing that shades, by what its kind is measured by. */
record FurnitureForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @NotNull @Nullable FurnitureKind kind,
        @Line @Size(max = 80) String name,

        @NotNull @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal xMetres,

        @NotNull @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal yMetres,

        @NotNull @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal zMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal endXMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal endYMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal endZMetres,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal widthMetres,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal depthMetres,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal heightMetres,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal radiusMetres,

        @DecimalMin("-360") @DecimalMax("360") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal yawDegrees,

        boolean restedOn,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    @Override
    public void check(Errors errors) {
        new FurnitureFields(this).check(errors);
    }

    @Override
    public RigStep step(long partId) {
        Furniture item = new FurnitureFields(this).furniture();
        return partId == 0 ? new FurnitureStep.Put(item) : new FurnitureStep.Move(partId, item);
    }
}
