package dapple.prediction;

import dapple.light.quantity.Quantity;
import dapple.rig.Cover;
import dapple.rig.CoverStep;
import dapple.rig.RigStep;
import dapple.site.Line;
import dapple.site.Occurrence;
import dapple.site.SourceMark;
import dapple.site.Together;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A mesh or sheet. */
record CoverForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @NotNull @Nullable CoverKind kind,
        @Line @Size(max = 80) String name,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal heightMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal lowXMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal lowYMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal highXMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal highYMetres,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal wireMillimetres,

        @DecimalMin("0.02") @DecimalMax("999.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal pitchMillimetres,

        @Nullable SourceMark weaveMark,
        @NotNull @Min(1) @Max(100) @Nullable Integer layers,

        @DecimalMin("0") @DecimalMax("100") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal uviPercent,

        @Nullable SourceMark uviMark,

        @DecimalMin("0") @DecimalMax("100") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal illuminancePercent,

        @Nullable SourceMark illuminanceMark,

        @DecimalMin("0") @DecimalMax("100") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal uvaPercent,

        @Nullable SourceMark uvaMark,

        @DecimalMin("0") @DecimalMax("100") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal irAPercent,

        @Nullable SourceMark irAMark,

        @DecimalMin("0") @DecimalMax("100") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal irBPercent,

        @Nullable SourceMark irBMark,

        @DecimalMin("0") @DecimalMax("100") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal irradiancePercent,

        @Nullable SourceMark irradianceMark,
        @Line @Size(max = 200) String source,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    private static final Together OVER =
            new Together(List.of("lowXMetres", "lowYMetres", "highXMetres", "highYMetres"), "rig.over.all-or-none");

    @Override
    public void check(Errors errors) {
        OVER.check(errors);
        new CoverFields(this).check(errors);
    }

    @Override
    public RigStep step(long partId) {
        Cover cover = new CoverFields(this).cover();
        return partId == 0 ? new CoverStep.Put(cover) : new CoverStep.Replace(partId, cover);
    }

    /** The percentage that passes of a quantity. */
    @Nullable
    BigDecimal percent(Quantity quantity) {
        return switch (CoverFields.field(quantity)) {
            case "uvi" -> uviPercent;
            case "illuminance" -> illuminancePercent;
            case "uva" -> uvaPercent;
            case "irA" -> irAPercent;
            case "irB" -> irBPercent;
            default -> irradiancePercent;
        };
    }

    /** How far that is known. */
    @Nullable
    SourceMark mark(Quantity quantity) {
        return switch (CoverFields.field(quantity)) {
            case "uvi" -> uviMark;
            case "illuminance" -> illuminanceMark;
            case "uva" -> uvaMark;
            case "irA" -> irAMark;
            case "irB" -> irBMark;
            default -> irradianceMark;
        };
    }
}
