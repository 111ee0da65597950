package dapple.reading;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A typed UV index at a point, with the key that lets it be sent twice and stored once. */
record EntryForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long meterId,

        @NotNull @DecimalMin("0") @DecimalMax("99.9") @Digits(integer = 2, fraction = 2) @Nullable
        BigDecimal amount) {

    static EntryForm empty(@Nullable Long meterId) {
        return new EntryForm(UUID.randomUUID(), meterId, null);
    }
}
