package dapple.reading;

import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The right number in place of a mistyped one, and why. */
record CorrectionForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable BigDecimal amount,
        @Line @Size(max = 200) String reason) {

    static CorrectionForm empty() {
        return new CorrectionForm(UUID.randomUUID(), null, "");
    }
}
