package dapple.desk;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An answer that goes into the draft: a height, layers, or another lamp, whichever is given.
 *
 * @param version of the draft that was asked about
 * @param part the number of the lamp or cover, from 0
 * @param pick the lamp that comes
 */
record TakeForm(
        @NotNull @Nullable Long version,
        @NotNull @Min(0) @Nullable Integer part,
        @DecimalMin("-9.99") @DecimalMax("99.99") @Nullable BigDecimal zMetres,
        @Min(0) @Max(100) @Nullable Integer layers,
        @Nullable String pick,
        @Nullable Turned turned) {
    Optional<Double> height() {
        return Optional.ofNullable(zMetres).map(BigDecimal::doubleValue);
    }
}
