package dapple.lamp;

import dapple.site.Given;
import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
        @Nullable Double spill,
        @Column(length = 20_000) @Nullable String beamTable) {

    static StoredShape of(LampShape shape) {
        if (shape instanceof LampShape.Line line) {
            Double lobe = line.lobe().orElse(null);
            return new StoredShape(ShapeKind.LINE, line.lengthMetres(), null, null, null, lobe, line.spill(), null);
        }
        if (shape instanceof LampShape.Cylinder tube) {
            return new StoredShape(
                    ShapeKind.CYLINDER, tube.lengthMetres(), null, tube.radiusMetres(), null, null, null, null);
        }
        if (shape instanceof LampShape.Spot spot) {
            Double radius = spot.radiusMetres().orElse(null);
            return new StoredShape(ShapeKind.SPOT, null, null, radius, spot.beamAngleDegrees(), null, null, null);
        }
        if (shape instanceof LampShape.Panel panel) {
            return new StoredShape(
                    ShapeKind.PANEL, panel.lengthMetres(), panel.widthMetres(), null, null, null, null, null);
        }
        if (shape instanceof LampShape.Measured measured) {
            Double radius = measured.radiusMetres().orElse(null);
            return new StoredShape(ShapeKind.MEASURED, null, null, radius, null, null, null, text(measured));
        }
        LampShape.Disc disc = (LampShape.Disc) shape;
        return new StoredShape(ShapeKind.DISC, null, null, disc.radiusMetres(), null, null, null, null);
    }

    private static String text(LampShape.Measured measured) {
        return IntStream.range(0, measured.relative().size())
                .mapToObj(degree -> degree + ":" + measured.relative().get(degree))
                .collect(Collectors.joining(" "));
    }

    private static List<Double> relative(String text) {
        return Arrays.stream(text.split(" ", -1))
                .map(row -> Double.valueOf(row.substring(row.indexOf(':') + 1)))
                .toList();
    }

    LampShape shape() {
        return switch (shapeKind) {
            case LINE ->
                new LampShape.Line(Given.of(lengthMetres), Optional.ofNullable(lobe), spill == null ? 0 : spill);
            case CYLINDER -> new LampShape.Cylinder(Given.of(lengthMetres), Given.of(radiusMetres));
            case SPOT -> new LampShape.Spot(Given.of(beamAngleDegrees), Optional.ofNullable(radiusMetres));
            case DISC -> new LampShape.Disc(Given.of(radiusMetres));
            case PANEL -> new LampShape.Panel(Given.of(lengthMetres), Given.of(widthMetres));
            case MEASURED -> new LampShape.Measured(relative(Given.of(beamTable)), Optional.ofNullable(radiusMetres));
        };
    }
}
