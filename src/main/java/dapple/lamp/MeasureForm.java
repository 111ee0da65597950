package dapple.lamp;

import dapple.light.quantity.Quantity;
import dapple.site.Given;
import dapple.site.Line;
import dapple.site.Occurrence;
import dapple.site.SourceMark;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** What was measured of one lamp, at which distance, when and with what. */
record MeasureForm(
        @NotNull @Nullable Quantity quantity,

        @NotNull @DecimalMin("0.000001") @DecimalMax("999999999") @Nullable
        BigDecimal reading,

        @NotNull @DecimalMin("0.01") @DecimalMax("20") @Nullable
        BigDecimal distanceMetres,

        @NotNull @DecimalMin("0.1") @DecimalMax("200") @Nullable
        BigDecimal uncertaintyPercent,

        @Nullable LocalDateTime measuredAt,
        @Nullable Occurrence measuredAtWhich,
        @Line @Size(max = 200) String source) {

    static MeasureForm empty(LocalDateTime now) {
        return new MeasureForm(Quantity.UV_INDEX, null, null, null, now, null, "");
    }

    boolean isOfAnotherQuantity() {
        return quantity != null && !LampOutput.QUANTITIES.contains(quantity);
    }

    LampOutput output() {
        return new LampOutput(
                Given.of(quantity),
                Given.number(reading),
                Given.number(distanceMetres),
                Percent.share(uncertaintyPercent),
                SourceMark.MEASURED,
                source.strip());
    }
}
