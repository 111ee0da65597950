package dapple.desk;

import dapple.light.quantity.Quantity;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * How many layers of a cover bring a place into a band.
 *
 * @param cover its number in the draft, from 0
 * @param point empty: the place that is typed
 */
record LayersAsked(
        @NotNull @Nullable Integer cover,
        @Nullable Long point,
        @DecimalMin("-9.99") @DecimalMax("99.99") @Nullable BigDecimal xMetres,
        @DecimalMin("-9.99") @DecimalMax("99.99") @Nullable BigDecimal yMetres,
        @DecimalMin("-9.99") @DecimalMax("99.99") @Nullable BigDecimal zMetres,
        @NotNull @Nullable Quantity quantity,

        @NotNull @DecimalMin("0") @DecimalMax("999999") @Nullable
        BigDecimal low,

        @NotNull @DecimalMin("0.01") @DecimalMax("999999") @Nullable
        BigDecimal high) {}
