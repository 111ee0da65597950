package dapple.api;

import dapple.light.geometry.Box;
import dapple.light.geometry.Capsule;
import dapple.light.geometry.Solid;
import dapple.light.geometry.UprightCylinder;
import dapple.light.geometry.Vec;
import java.util.ArrayList;
import java.util.List;

/** Reads what shades. */
final class ObstacleReader {
    private static final int MOST_SOLIDS = 2000;
    private static final double LEAST = 1e-6;
    private static final double MOST = 2000;

    private ObstacleReader() {}

    static List<Solid> read(Part part) {
        List<Solid> solids = new ArrayList<>();
        for (Part item : part.atMost(MOST_SOLIDS, "obstacles")) {
            solids.add(solid(item));
        }
        return solids;
    }

    private static Solid solid(Part part) {
        String shape = part.object("shape", "min", "max", "yaw", "from", "to", "radius", "base", "height")
                .need("shape")
                .text();
        return switch (shape) {
            case "box" -> box(part.object("shape", "min", "max", "yaw"));
            case "capsule" -> capsule(part.object("shape", "from", "to", "radius"));
            case "cylinder" -> cylinder(part.object("shape", "base", "height", "radius"));
            default -> throw part.need("shape").fault("This shape is not known. Known are: box, capsule, cylinder.");
        };
    }

    private static Solid box(Part part) {
        Vec least = part.need("min").place();
        Vec greatest = part.need("max").place();
        Vec size = greatest.minus(least);
        if (!(Math.min(size.x(), Math.min(size.y(), size.z())) >= LEAST)) {
            throw part.need("max").fault("A box must have a size: max must lie beyond min in x, y and z.");
        }
        double yaw = part.find("yaw").map(given -> given.number(-3600, 3600)).orElse(0.0);
        return Box.of(least, greatest, yaw);
    }

    private static Solid capsule(Part part) {
        return Capsule.of(part.need("from").place(), part.need("to").place(), size(part.need("radius")));
    }

    private static Solid cylinder(Part part) {
        return UprightCylinder.of(part.need("base").place(), size(part.need("height")), size(part.need("radius")));
    }

    private static double size(Part part) {
        return part.number(LEAST, MOST);
    }
}
