package dapple.lamp;

import dapple.site.Given;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The columns of a lamp's shape: those that its kind does not have are empty. */
@Embeddable
record StoredShape(
        @Enumerated(EnumType.STRING) ShapeKind shapeKind,
        @Nullable Double lengthMetres,
        @Nullable Double widthMetres,
        @Nullable Double radiusMetres,
        @Nullable Double beamAngleDegrees,
        @Nullable Double lobe,
        @Nullable Double spill) {

    static StoredShape of(LampShape shape) {
        if (shape instanceof LampShape.Line line) {
            Double lobe = line.lobe().orElse(null);
            return new StoredShape(ShapeKind.LINE, line.lengthMetres(), null, null, null, lobe, line.spill());
        }
        if (shape instanceof LampShape.Cylinder tube) {
            return new StoredShape(
                    ShapeKind.CYLINDER, tube.lengthMetres(), null, tube.radiusMetres(), null, null, null);
        }
        if (shape instanceof LampShape.Spot spot) {
            Double radius = spot.radiusMetres().orElse(null);
            return new StoredShape(ShapeKind.SPOT, null, null, radius, spot.beamAngleDegrees(), null, null);
        }
        if (shape instanceof LampShape.Panel panel) {
            return new StoredShape(ShapeKind.PANEL, panel.lengthMetres(), panel.widthMetres(), null, null, null, null);
        }
        LampShape.Disc disc = (LampShape.Disc) shape;
        return new StoredShape(ShapeKind.DISC, null, null, disc.radiusMetres(), null, null, null);
    }

    LampShape shape() {
        return switch (shapeKind) {
            case LINE ->
                new LampShape.Line(Given.of(lengthMetres), Optional.ofNullable(lobe), spill == null ? 0 : spill);
            case CYLINDER -> new LampShape.Cylinder(Given.of(lengthMetres), Given.of(radiusMetres));
            case SPOT -> new LampShape.Spot(Given.of(beamAngleDegrees), Optional.ofNullable(radiusMetres));
            case DISC -> new LampShape.Disc(Given.of(radiusMetres));
            case PANEL -> new LampShape.Panel(Given.of(lengthMetres), Given.of(widthMetres));
        };
    }
}
