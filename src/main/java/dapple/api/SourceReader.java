package dapple.api;

import dapple.light.geometry.Vec;
import dapple.light.source.Source;
import java.util.Optional;

/** Reads the shape that a lamp emits from, with the name of the member that states its emission absolutely. */
final class SourceReader {
    /** Largest cosine between two directions that counts as perpendicular. */
    private static final double PERPENDICULAR = 1e-6;

    private SourceReader() {}

    static Source read(Part part) {
        String shape = part.object(
                        "shape",
                        "length",
                        "along",
                        "lobe",
                        "spill",
                        "radius",
                        "width",
                        "exponent",
                        "beamAngle",
                        "table",
                        "ies")
                .need("shape")
                .text();
        return switch (shape) {
            case "line" -> line(part.object("shape", "length", "along", "lobe", "spill"));
            case "cylinder" -> cylinder(part.object("shape", "length", "along", "radius"));
            case "disc" -> new Source.Disc(size(part.object("shape", "radius").need("radius")));
            case "rectangle" -> rectangle(part.object("shape", "length", "along", "width"));
            case "beam" -> beam(part.object("shape", "exponent", "beamAngle", "table", "ies", "radius"));
            default ->
                throw part.need("shape")
                        .fault("This shape is not known. Known are: line, cylinder, disc, rectangle, beam.");
        };
    }

    private static double size(Part part) {
        return part.number(Source.LEAST, Source.MOST);
    }

    private static Source line(Part part) {
        Optional<Source.Reflector> reflector = part.find("lobe")
                .map(lobe -> new Source.Reflector(
                        lobe.number(0, 1000),
                        part.find("spill").map(spill -> spill.number(0, 1)).orElse(0.0)));
        if (reflector.isEmpty() && part.has("spill")) {
            throw part.need("spill").fault("A spill needs a lobe: without one the tube is bare.");
        }
        return new Source.Line(size(part.need("length")), part.need("along").direction(), reflector);
    }

    private static Source cylinder(Part part) {
        return new Source.Cylinder(
                size(part.need("length")), part.need("along").direction(), size(part.need("radius")));
    }

    private static Source rectangle(Part part) {
        return new Source.Rectangle(
                size(part.need("length")), part.need("along").direction(), size(part.need("width")));
    }

    private static Source beam(Part part) {
        var beam = BeamReader.read(part);
        return part.find("radius")
                .<Source>map(radius -> new Source.Face(beam, size(radius)))
                .orElseGet(() -> new Source.Spot(beam));
    }

    /** Whether the aim says nothing of this source. */
    static boolean isAllRound(Source source) {
        return source instanceof Source.Cylinder
                || (source instanceof Source.Line line && line.reflector().isEmpty());
    }

    /** Refuses an aim along a source whose face or reflector it must point away from. */
    static void requirePerpendicular(Part aim, Vec direction, Source source) {
        Optional<Vec> along = Optional.empty();
        if (source instanceof Source.Rectangle rectangle) {
            along = Optional.of(rectangle.along());
        } else if (source instanceof Source.Line line && line.reflector().isPresent()) {
            along = Optional.of(line.along());
        }
        if (along.isPresent() && !(Math.abs(direction.dot(along.get())) <= PERPENDICULAR)) {
            throw aim.fault("The aim must be perpendicular to along.");
        }
    }

    /** The member that states the emission of a source absolutely. */
    static String emission(Source source) {
        if (source instanceof Source.Line) {
            return "intensityPerLength";
        }
        return source instanceof Source.Spot || source instanceof Source.Face ? "intensity" : "radiance";
    }
}
