package dapple.enclosure;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
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
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a measuring point is, with the version that the form was made from; where no quantity is named, the UV index. */
record PointForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 10) String code,
        @Line @Size(max = 120) String place,
        @NotNull @Nullable PointRole role,
        @NotNull @Nullable Facing facing,
        @Order @Nullable Integer order,

        @Size(min = 1, message = "{jakarta.validation.constraints.NotEmpty.message}") @Nullable
        Set<Quantity> quantities,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal xMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal yMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal zMetres) {

    private static final Set<Quantity> UV_INDEX_ALONE = Set.of(Quantity.UV_INDEX);

    static final Together POSITION = new Together(List.of("xMetres", "yMetres", "zMetres"));

    static PointForm empty(int order) {
        return new PointForm(0L, "", "", PointRole.BASKING, Facing.STRONGEST, order, UV_INDEX_ALONE, null, null, null);
    }

    static PointForm of(PointDetails point) {
        PointFacts facts = point.facts();
        Optional<Position> position = facts.position();
        return new PointForm(
                point.version(),
                facts.code(),
                facts.place(),
                facts.role(),
                facts.facing(),
                point.walkingOrder(),
                Set.copyOf(facts.quantities()),
                position.map(Position::xMetres).map(BigDecimal::valueOf).orElse(null),
                position.map(Position::yMetres).map(BigDecimal::valueOf).orElse(null),
                position.map(Position::zMetres).map(BigDecimal::valueOf).orElse(null));
    }

    PointForm onVersion(long newVersion) {
        return new PointForm(newVersion, code, place, role, facing, order, quantities, xMetres, yMetres, zMetres);
    }

    long versionSeen() {
        return Given.of(version);
    }

    PointChange change() {
        return new PointChange(
                new NewPoint(code.strip(), place.strip(), Given.of(role), Given.of(facing), position(), asked()),
                Given.of(order));
    }

    private List<Quantity> asked() {
        return (quantities == null ? UV_INDEX_ALONE : quantities)
                .stream().sorted().toList();
    }

    private Optional<Position> position() {
        return Optional.ofNullable(xMetres)
                .map(x -> new Position(x.doubleValue(), Given.number(yMetres), Given.number(zMetres)));
    }
}
