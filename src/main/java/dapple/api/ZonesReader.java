package dapple.api;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.survey.Needs;
import dapple.light.zone.Body;
import dapple.light.zone.RestingSurface;
import dapple.light.zone.ZoneTarget;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads which zones are asked for. */
final class ZonesReader {
    private static final double MOST = 1e12;
    private static final double MOST_METRES = 100;
    private static final int MOST_SURFACES = 10;

    /** Shortest side of a resting surface: 1 mm. */
    private static final double LEAST_SIDE = 0.001;

    private final Set<Quantity> emitted = EnumSet.noneOf(Quantity.class);

    ZonesReader(List<Lamp> lamps) {
        lamps.forEach(lamp -> lamp.outputs().stream().map(Output::quantity).forEach(emitted::add));
    }

    Needs read(Part part) {
        part.object(
                "quantity",
                "basking",
                "shade",
                "ceiling",
                "bodyLength",
                "surface",
                "reach",
                "evenness",
                "also",
                "overlap");
        ZoneTarget target = target(part);
        Quantity quantity = emitted(part.need("quantity"));
        List<RestingSurface> surfaces = part.find("surface").map(this::surfaces).orElse(List.of());
        requireSurface(part, "also");
        requireSurface(part, "overlap");
        return new Needs(
                quantity,
                target,
                Optional.of(body(part)),
                surfaces,
                part.find("reach").map(given -> given.number(0, MOST_METRES)),
                part.find("also").map(given -> also(given, quantity)).orElse(Map.of()),
                part.find("overlap").map(given -> given.number(0, 1)));
    }

    private static ZoneTarget target(Part part) {
        Interval basking = interval(part.need("basking"));
        Interval shade = interval(part.need("shade"));
        double ceiling = part.need("ceiling").number(0, MOST);
        if (!(shade.high() <= basking.low())) {
            throw part.need("shade").fault("Shade must end at or below the low end of basking.");
        }
        if (!(ceiling >= basking.high())) {
            throw part.need("ceiling").fault("The ceiling must not lie below the high end of basking.");
        }
        return new ZoneTarget(basking, shade.high(), ceiling);
    }

    private static Interval interval(Part part) {
        List<Part> ends = part.items(2);
        double low = ends.get(0).number(0, MOST);
        double high = ends.get(1).number(0, MOST);
        if (!(low <= high)) {
            throw part.fault("The low end comes first.");
        }
        return new Interval(low, high);
    }

    private static Body body(Part part) {
        return new Body(
                part.need("bodyLength").aboveZero(MOST_METRES),
                part.find("evenness").map(given -> given.number(0, 1)).orElse(Body.USUAL_EVENNESS));
    }

    private Quantity emitted(Part part) {
        Quantity quantity = part.quantity();
        if (!emitted.contains(quantity)) {
            throw part.fault("No lamp gives this quantity.");
        }
        return quantity;
    }

    /** One surface, or a list of them. */
    private List<RestingSurface> surfaces(Part part) {
        if (!part.node().isArray()) {
            return List.of(surface(part));
        }
        List<RestingSurface> surfaces = part.atMost(MOST_SURFACES, "surfaces").stream()
                .map(ZonesReader::surface)
                .toList();
        if (surfaces.isEmpty()) {
            throw part.fault("At least one surface must stand here.");
        }
        return surfaces;
    }

    private static RestingSurface surface(Part part) {
        part.object("point", "normal", "within");
        Vec point = part.need("point").place();
        Vec normal = part.need("normal").direction();
        if (!(Math.abs(normal.z()) >= RestingSurface.LEAST_UPRIGHT)) {
            throw part.need("normal").fault("A resting surface must not stand upright.");
        }
        Filter.Rectangle within = FilterReader.rectangle(part.need("within"));
        if (!(within.highX() - within.lowX() >= LEAST_SIDE && within.highY() - within.lowY() >= LEAST_SIDE)) {
            throw part.need("within").fault("A resting surface must be at least 0.001 m wide and deep.");
        }
        return new RestingSurface(point, normal, within);
    }

    private static void requireSurface(Part part, String name) {
        if (part.has(name) && !part.has("surface")) {
            throw part.need(name).fault("This is asked of the patch, so it needs a surface.");
        }
    }

    private Map<Quantity, Interval> also(Part part, Quantity first) {
        Map<Quantity, Interval> targets = new EnumMap<>(Quantity.class);
        for (Part item : part.atMost(Names.count(), "other quantities")) {
            item.object("quantity", "basking");
            Quantity quantity = emitted(item.need("quantity"));
            if (quantity == first || targets.containsKey(quantity)) {
                throw item.need("quantity").fault("This quantity has a target for basking already.");
            }
            targets.put(quantity, interval(item.need("basking")));
        }
        return targets;
    }
}
