package dapple.practice;

import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The lamp that a meter is checked by, and what the meter shows under it at first. */
record ReferenceLampForm(
        @NotNull @Nullable UUID key,
        @Line @Size(max = 80) String name,
        @Line @Size(max = 200) String setUp,

        @NotNull(message = "{practice.first.needed}")
        @DecimalMin(value = "0.000001", message = "{practice.first.needed}")
        @DecimalMax(value = "999999", message = "{practice.first.needed}")
        @Nullable
        BigDecimal firstAmount,

        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich) {
    static ReferenceLampForm empty(LocalDateTime now) {
        return new ReferenceLampForm(UUID.randomUUID(), "", "", null, now, null);
    }
}
