package dapple.practice;

import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a meter showed in a check. */
record CheckForm(
        @NotNull @Nullable UUID key,

        @NotNull(message = "{practice.amount.needed}")
        @DecimalMin(value = "-999999", message = "{practice.amount.needed}")
        @DecimalMax(value = "999999", message = "{practice.amount.needed}")
        @Nullable
        BigDecimal amount,

        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,

        @Pattern(regexp = "(?U)\\P{Cntrl}*", message = "{arrange.line}") @Size(max = 200)
        String note) {
    CheckForm {
        note = note == null ? "" : note;
    }

    static CheckForm empty(LocalDateTime now) {
        return new CheckForm(UUID.randomUUID(), null, now, null, "");
    }
}
