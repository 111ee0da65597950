package dapple.reading;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The right UV index in place of a mistyped one, and why. */
record CorrectionForm(
        @NotNull @Nullable UUID key,

        @NotNull @DecimalMin("0") @DecimalMax("99.9") @Digits(integer = 2, fraction = 2) @Nullable
        BigDecimal amount,

        @NotBlank @Size(max = 200) String reason) {

    static CorrectionForm empty() {
        return new CorrectionForm(UUID.randomUUID(), null, "");
    }
}
