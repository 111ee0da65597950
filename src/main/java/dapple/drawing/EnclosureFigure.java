package dapple.drawing;

import dapple.light.cover.Filter;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.judging.State;
import dapple.light.source.Source;
import dapple.light.zone.RestingSurface;
import java.util.List;
import java.util.Optional;

/**
 * What stands and hangs in an enclosure, to be drawn: x to the right, y away from the front, z up, from the inner corner at
 * the front, left and below; metres.
 *
 * @param inside the corner opposite, that is the inner width, depth and height
 */
public record EnclosureFigure(
        Vec inside,
        List<Lid> lids,
        List<Lamp> lamps,
        List<Solid> furniture,
        List<RestingSurface> restingPlaces,
        List<Point> points) {
    public EnclosureFigure {
        if (!(inside.x() > 0 && inside.y() > 0 && inside.z() > 0) || !inside.isFinite()) {
            throw new IllegalArgumentException("an enclosure must have a size, was " + inside);
        }
        lids = List.copyOf(lids);
        lamps = List.copyOf(lamps);
        furniture = List.copyOf(furniture);
        restingPlaces = List.copyOf(restingPlaces);
        points = List.copyOf(points);
    }

    public EnclosureFigure withoutPoints() {
        return new EnclosureFigure(inside, lids, lamps, furniture, restingPlaces, List.of());
    }

    /** A level cover. */
    public record Lid(double heightMetres, Filter.Rectangle within) {}

    /**
     * A lamp by what emits.
     *
     * @param name as people know it
     */
    public record Lamp(String name, Vec centre, Vec aim, Source source) {}

    /** How an amount is known. */
    public enum Known {
        MEASURED,
        PREDICTED,
        UNKNOWN
    }

    /**
     * A measuring point.
     *
     * @param amount in words, with a unit where the drawing does not name it; what says that nothing is known if so
     * @param state whose mark stands beside the amount; empty where nothing is judged
     */
    public record Point(String name, Vec place, Known known, String amount, Optional<State> state) {}
}
