package dapple.enclosure;

import dapple.site.Given;
import dapple.site.Line;
import dapple.site.Order;
import dapple.site.Together;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Code, room and inner size of an enclosure, with the version that the form was made from. */
record EnclosureForm(
        @NotNull @Nullable Long version,
        @NotNull @Nullable Long roomId,
        @Line @Size(max = 20) String code,
        @Order @Nullable Integer order,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal widthMetres,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal depthMetres,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal heightMetres) {

    static final Together SIZE = new Together(List.of("widthMetres", "depthMetres", "heightMetres"));

    static EnclosureForm empty(long roomId, int order) {
        return new EnclosureForm(0L, roomId, "", order, null, null, null);
    }

    static EnclosureForm of(EnclosureDetails enclosure) {
        EnclosureChange state = enclosure.state();
        Optional<InnerSize> size = state.size();
        return new EnclosureForm(
                enclosure.version(),
                state.roomId(),
                state.code(),
                state.walkingOrder(),
                size.map(InnerSize::widthMetres).map(BigDecimal::valueOf).orElse(null),
                size.map(InnerSize::depthMetres).map(BigDecimal::valueOf).orElse(null),
                size.map(InnerSize::heightMetres).map(BigDecimal::valueOf).orElse(null));
    }

    EnclosureForm onVersion(long newVersion) {
        return new EnclosureForm(newVersion, roomId, code, order, widthMetres, depthMetres, heightMetres);
    }

    long versionSeen() {
        return Given.of(version);
    }

    EnclosureChange change() {
        return new EnclosureChange(Given.of(roomId), code.strip(), Given.of(order), size());
    }

    private Optional<InnerSize> size() {
        return Optional.ofNullable(widthMetres)
                .map(width ->
                        new InnerSize(width.doubleValue(), Given.number(depthMetres), Given.number(heightMetres)));
    }
}
