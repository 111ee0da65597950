package dapple.reading;

import dapple.enclosure.Facing;
import dapple.light.quantity.Quantity;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A typed number at a point, with the key that lets it be sent twice and stored once. */
record EntryForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long meterId,
        @Nullable Quantity quantity,
        @NotNull @Nullable BigDecimal amount,
        @Nullable Facing held) {

    static EntryForm empty(Quantity quantity, @Nullable Long meterId) {
        return new EntryForm(UUID.randomUUID(), meterId, quantity, null, null);
    }

    Quantity asked() {
        return quantity == null ? Quantity.UV_INDEX : quantity;
    }

    Optional<Facing> heldOtherwise() {
        return Optional.ofNullable(held);
    }

    void check(Errors errors) {
        TypedAmount.check(amount, asked(), errors);
    }
}
