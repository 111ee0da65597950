package dapple.reading;

import dapple.enclosure.Facing;
import dapple.light.quantity.Quantity;
import dapple.site.Given;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * A typed number at a point, with the key that lets it be sent twice and stored once.
 *
 * @param sure the number again, where it was asked about before as the meter cannot show it
 */
record EntryForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long meterId,
        @Nullable Quantity quantity,
        @NotNull @Nullable BigDecimal amount,
        @Nullable Facing held,
        @Nullable BigDecimal sure) {

    static EntryForm empty(Quantity quantity, @Nullable Long meterId) {
        return new EntryForm(UUID.randomUUID(), meterId, quantity, null, null, null);
    }

    Quantity asked() {
        return quantity == null ? Quantity.UV_INDEX : quantity;
    }

    Optional<Facing> heldOtherwise() {
        return Optional.ofNullable(held);
    }

    /** Whether it was asked about this number already. */
    boolean isSure() {
        return sure != null && amount != null && sure.compareTo(amount) == 0;
    }

    /** The same for the next of several amounts. */
    EntryForm forAnother() {
        return new EntryForm(key, meterId, quantity, null, held, null);
    }

    Entry entry(VisitPlace place, Instant takenAt) {
        return new Entry(Given.of(key), place, Given.of(meterId), Given.number(amount), takenAt, heldOtherwise());
    }

    void check(Errors errors) {
        TypedAmount.check(amount, asked(), errors);
    }
}
