package dapple.lamp;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Name, class, power and shape of a lamp model, with the version that the form was made from. */
record ModelForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 80) String name,
        @NotNull @Nullable LampClass lampClass,
        @DecimalMin("0.1") @DecimalMax("9999") @Nullable BigDecimal watts,
        @Nullable ShapeKind shapeKind,
        @DecimalMin("0.001") @DecimalMax("10") @Nullable BigDecimal lengthMetres,
        @DecimalMin("0.001") @DecimalMax("10") @Nullable BigDecimal widthMetres,
        @DecimalMin("0.001") @DecimalMax("10") @Nullable BigDecimal radiusMetres,
        @DecimalMin("0.5") @DecimalMax("179.9") @Nullable BigDecimal beamAngleDegrees,
        @DecimalMin("0") @DecimalMax("1000") @Nullable BigDecimal lobe,
        @DecimalMin("0") @DecimalMax("1") @Nullable BigDecimal spill) {

    static ModelForm empty(LampClass lampClass) {
        return new ModelForm(0L, "", lampClass, null, null, null, null, null, null, null, null);
    }

    static ModelForm of(Dossier model) {
        LampModelChange state = model.state();
        Optional<StoredShape> shape = state.shape().map(StoredShape::of);
        return new ModelForm(
                model.version(),
                state.name(),
                state.lampClass(),
                state.watts().map(BigDecimal::valueOf).orElse(null),
                shape.map(StoredShape::shapeKind).orElse(null),
                decimal(shape.map(StoredShape::lengthMetres)),
                decimal(shape.map(StoredShape::widthMetres)),
                decimal(shape.map(StoredShape::radiusMetres)),
                decimal(shape.map(StoredShape::beamAngleDegrees)),
                decimal(shape.map(StoredShape::lobe)),
                decimal(shape.filter(stored -> stored.lobe() != null).map(StoredShape::spill)));
    }

    private static @Nullable BigDecimal decimal(Optional<Double> number) {
        return number.map(BigDecimal::valueOf).orElse(null);
    }

    ModelForm onVersion(long newVersion) {
        return new ModelForm(
                newVersion,
                name,
                lampClass,
                watts,
                shapeKind,
                lengthMetres,
                widthMetres,
                radiusMetres,
                beamAngleDegrees,
                lobe,
                spill);
    }

    long versionSeen() {
        return Given.of(version);
    }

    /**
     * What the form says.
     *
     * @param before the shape that the model has; one by a file stays, with its radius
     */
    LampModelChange change(Optional<LampShape> before) {
        return new LampModelChange(
                name.strip(),
                Given.of(lampClass),
                Optional.ofNullable(watts).map(BigDecimal::doubleValue),
                Optional.ofNullable(shapeKind).map(kind -> shape(kind, before)));
    }

    private LampShape shape(ShapeKind kind, Optional<LampShape> before) {
        if (kind != ShapeKind.MEASURED) {
            return stored(kind).shape();
        }
        LampShape.Measured measured = (LampShape.Measured) before.orElseThrow();
        return new LampShape.Measured(measured.relative(), Optional.ofNullable(number(radiusMetres)));
    }

    private StoredShape stored(ShapeKind kind) {
        return new StoredShape(
                kind,
                number(lengthMetres),
                number(widthMetres),
                number(radiusMetres),
                number(beamAngleDegrees),
                number(lobe),
                number(spill),
                null);
    }

    private static @Nullable Double number(@Nullable BigDecimal typed) {
        return typed == null ? null : typed.doubleValue();
    }
}
