package dapple.api;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads what covers an enclosure. */
final class FilterReader {
    private static final int MOST_FILTERS = 200;

    /** Largest sideways part of a normal of length 1 whose plane counts as horizontal. */
    private static final double LEVEL = 1e-9;

    private static final double LEAST_ANGLE = 1e-6;

    private final Set<Quantity> emitted = EnumSet.noneOf(Quantity.class);

    FilterReader(List<Lamp> lamps) {
        lamps.forEach(lamp -> lamp.outputs().stream().map(Output::quantity).forEach(emitted::add));
    }

    List<Filter> read(Part part) {
        List<Filter> filters = new ArrayList<>();
        for (Part item : part.atMost(MOST_FILTERS, "filters")) {
            filters.add(filter(item));
        }
        return filters;
    }

    private Filter filter(Part part) {
        String kind = part.object(
                        "kind",
                        "plane",
                        "over",
                        "wire",
                        "pitch",
                        "layers",
                        "along",
                        "transmittance",
                        "index",
                        "thickness",
                        "absorption")
                .need("kind")
                .text();
        return switch (kind) {
            case "mesh" ->
                mesh(part.object("kind", "plane", "over", "wire", "pitch", "layers", "along", "transmittance"));
            case "sheet" -> sheet(part.object("kind", "plane", "over", "transmittance"));
            case "pane" -> pane(part.object("kind", "plane", "over", "index", "thickness", "absorption"));
            default -> throw part.need("kind").fault("This kind is not known. Known are: mesh, sheet, pane.");
        };
    }

    private Filter mesh(Part part) {
        int layers = part.find("layers").map(given -> given.whole(1, 100)).orElse(1);
        if (part.oneOf("wire", "transmittance").equals("transmittance")) {
            part.object("kind", "plane", "over", "layers", "along", "transmittance");
            return new Filter.Measured(plane(part), named(part.need("transmittance"), 1), layers);
        }
        double pitch = part.need("pitch").number(1e-6, 1);
        double wire = part.need("wire").aboveZero(1);
        if (!(wire < pitch)) {
            throw part.need("wire").fault("The wire must be thinner than the pitch.");
        }
        Filter.Plane plane = plane(part);
        if (!isLevel(plane.normal()) && !part.has("along")) {
            throw new Part(part.node().path("along"), part.pointer() + "/along")
                    .fault("A mesh on a plane that is not horizontal needs the direction of its wires.");
        }
        return new Filter.Mesh(plane, wire, pitch, layers);
    }

    private Filter sheet(Part part) {
        return new Filter.Measured(plane(part), named(part.need("transmittance"), 1), 1);
    }

    private Filter pane(Part part) {
        return new Filter.Pane(
                plane(part),
                part.need("index").number(1, 4),
                part.need("thickness").number(1e-6, 1),
                named(part.need("absorption"), 1e9));
    }

    private Map<Quantity, Double> named(Part part, double most) {
        Map<Quantity, Double> numbers = part.byQuantity(0, most);
        for (Quantity quantity : emitted) {
            if (!numbers.containsKey(quantity)) {
                throw new Part(part.node(), part.pointer() + "/" + Names.of(quantity))
                        .fault("A lamp gives this quantity, so it must be named here.");
            }
        }
        return numbers;
    }

    private static Filter.Plane plane(Part part) {
        Part given = part.need("plane").object("point", "normal");
        Vec point = given.need("point").place();
        Vec normal = given.need("normal").direction();
        Optional<Filter.Rectangle> over = part.find("over").map(rectangle -> over(rectangle, normal));
        return part.find("along")
                .map(along -> new Filter.Plane(point, normal, inPlane(along, normal), over))
                .orElseGet(() -> Filter.Plane.of(point, normal, over));
    }

    private static Filter.Rectangle over(Part part, Vec normal) {
        if (!isLevel(normal)) {
            throw part.fault("Only a filter on a horizontal plane can be limited to a rectangle.");
        }
        return rectangle(part);
    }

    /** Two opposite corners in x and y. */
    static Filter.Rectangle rectangle(Part part) {
        List<Part> corners = part.items(2);
        List<Part> one = corners.get(0).items(2);
        List<Part> other = corners.get(1).items(2);
        double width = one.get(0).coordinate() - other.get(0).coordinate();
        double depth = one.get(1).coordinate() - other.get(1).coordinate();
        if (width == 0 || depth == 0) {
            throw part.fault("A rectangle must have a size.");
        }
        return Filter.Rectangle.between(
                one.get(0).coordinate(),
                one.get(1).coordinate(),
                other.get(0).coordinate(),
                other.get(1).coordinate());
    }

    private static Vec inPlane(Part part, Vec normal) {
        Vec along = part.direction();
        if (along.cross(normal).length() < LEAST_ANGLE) {
            throw part.fault("The wires must not stand upright on their plane.");
        }
        return along;
    }

    private static boolean isLevel(Vec normal) {
        return Math.hypot(normal.x(), normal.y()) <= LEVEL;
    }
}
