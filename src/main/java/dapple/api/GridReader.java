package dapple.api;

import dapple.api.Asked.Grid;
import dapple.api.Asked.Surface;
import dapple.api.Asked.Uncertainty;
import dapple.api.Asked.Zones;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads a grid, what is asked of it, and how sure the scene is of itself. */
final class GridReader {
    private static final double MOST_POINTS = 2_000_000;
    private static final double MOST = 1e12;

    /** Share of a step by which the last point may lie beyond the end, for the sake of decimals such as 0.1. */
    private static final double SLACK = 1e-6;

    private GridReader() {}

    static Grid grid(Part part, ReceiverReader receivers) {
        part.object("from", "to", "step", "facing");
        Vec from = part.need("from").place();
        Vec to = part.need("to").place();
        double step = part.need("step").number(1e-6, 1000);
        Vec way = to.minus(from);
        if (!(Math.min(way.x(), Math.min(way.y(), way.z())) >= 0)) {
            throw part.need("to").fault("A grid must end beyond its beginning, in x, y and z.");
        }
        double x = count(way.x(), step);
        double y = count(way.y(), step);
        double z = count(way.z(), step);
        if (!(x * y * z <= MOST_POINTS)) {
            throw Problem.tooMuch(
                            part.pointer(),
                            String.format(Locale.ROOT, "A grid may have at most %,.0f points.", MOST_POINTS))
                    .refused();
        }
        return new Grid(from, step, (int) x, (int) y, (int) z, receivers.facing(part.need("facing")));
    }

    private static double count(double way, double step) {
        return Math.floor(way / step + SLACK) + 1;
    }

    static Zones zones(Part part, List<Lamp> lamps) {
        part.object("quantity", "basking", "shade", "ceiling", "bodyLength", "surface");
        Interval basking = interval(part.need("basking"));
        Interval shade = interval(part.need("shade"));
        double ceiling = part.need("ceiling").number(0, MOST);
        if (!(shade.high() <= basking.low())) {
            throw part.need("shade").fault("Shade must end at or below the low end of basking.");
        }
        if (!(ceiling >= basking.high())) {
            throw part.need("ceiling").fault("The ceiling must not lie below the high end of basking.");
        }
        return new Zones(
                emitted(part.need("quantity"), lamps),
                basking,
                shade,
                ceiling,
                part.need("bodyLength").aboveZero(100),
                part.find("surface").map(GridReader::surface));
    }

    private static Quantity emitted(Part part, List<Lamp> lamps) {
        Quantity quantity = part.quantity();
        if (lamps.stream()
                .flatMap(lamp -> lamp.outputs().stream())
                .noneMatch(output -> output.quantity() == quantity)) {
            throw part.fault("No lamp gives this quantity.");
        }
        return quantity;
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

    private static Surface surface(Part part) {
        part.object("point", "normal", "within");
        return new Surface(
                part.need("point").place(),
                part.need("normal").direction(),
                FilterReader.rectangle(part.need("within")));
    }

    static Uncertainty uncertainty(Part part) {
        part.object("reading", "meter", "position");
        return new Uncertainty(share(part, "reading"), share(part, "meter"), share(part, "position"));
    }

    private static double share(Part part, String name) {
        return Optional.of(part.need(name)).map(given -> given.number(0, 10)).orElse(0.0);
    }
}
