package dapple.api;

import dapple.api.Asked.Grid;
import dapple.light.geometry.Vec;
import dapple.light.uncertainty.SceneUncertainty;
import java.util.Locale;

/** Reads a grid, and how sure the scene is of itself. */
final class GridReader {
    private static final double MOST_POINTS = 2_000_000;

    /** Largest uncertainty: ten times a reading, or 10 m. */
    private static final double MOST_SHARE = 10;

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

    /** What the model adds is no member of its own. */
    static SceneUncertainty uncertainty(Part part) {
        part.object("reading", "meter", "position");
        return new SceneUncertainty(
                part.need("reading").number(0, MOST_SHARE),
                part.need("meter").number(0, MOST_SHARE),
                part.need("position").number(0, MOST_SHARE),
                0);
    }
}
