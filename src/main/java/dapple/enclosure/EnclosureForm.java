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
import org.springframework.validation.Errors;

/** Code, room, inner size, front and reach of an enclosure, with the version that the form was made from. */
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
        BigDecimal heightMetres,

        @Nullable FrontKind front,
        @Nullable ReachKind reach,

        @DecimalMin("0.01") @DecimalMax("20") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal reachMetres) {

    private static final Together SIZE = new Together(List.of("widthMetres", "depthMetres", "heightMetres"));

    static EnclosureForm empty(long roomId, int order) {
        return new EnclosureForm(0L, roomId, "", order, null, null, null, null, null, null);
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
                size.map(InnerSize::heightMetres).map(BigDecimal::valueOf).orElse(null),
                state.front().orElse(null),
                state.reach().map(StatedReach::kind).orElse(null),
                state.reach()
                        .flatMap(StatedReach::metres)
                        .map(BigDecimal::valueOf)
                        .orElse(null));
    }

    EnclosureForm onVersion(long newVersion) {
        return new EnclosureForm(
                newVersion, roomId, code, order, widthMetres, depthMetres, heightMetres, front, reach, reachMetres);
    }

    long versionSeen() {
        return Given.of(version);
    }

    EnclosureChange change() {
        return new EnclosureChange(
                Given.of(roomId), code.strip(), Given.of(order), size(), Optional.ofNullable(front), reachStated());
    }

    /** What no field says alone. */
    void check(Errors errors) {
        SIZE.check(errors);
        boolean isGiven = reachMetres != null;
        if (reach == null && isGiven) {
            errors.rejectValue("reach", "enclosure.reach.which");
        }
        if (reach != null && !StatedReach.fits(reach, isGiven)) {
            errors.rejectValue("reachMetres", isGiven ? "animal.reach.not-needed" : "animal.reach.needed");
        }
    }

    private Optional<StatedReach> reachStated() {
        return Optional.ofNullable(reach)
                .map(kind ->
                        new StatedReach(kind, Optional.ofNullable(reachMetres).map(BigDecimal::doubleValue)));
    }

    private Optional<InnerSize> size() {
        return Optional.ofNullable(widthMetres)
                .map(width ->
                        new InnerSize(width.doubleValue(), Given.number(depthMetres), Given.number(heightMetres)));
    }
}
