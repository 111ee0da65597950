package dapple.light.design;

import dapple.light.geometry.Bounds;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Optional;

/**
 * A lamp turned as it may hang, to be hung anywhere.
 *
 * @param lamp where it stands now does not matter; its readings go with it
 */
public record Pose(Lamp lamp) {
    /** The lamp with its middle at a place; where its output was read moves along. */
    public Lamp at(Vec centre) {
        return at(lamp.id(), centre);
    }

    Lamp at(String id, Vec centre) {
        Vec way = centre.minus(lamp.centre());
        return new Lamp(
                id,
                centre,
                lamp.aim(),
                lamp.source(),
                lamp.outputs().stream().map(output -> moved(output, way)).toList());
    }

    private static Output moved(Output output, Vec way) {
        return output instanceof Output.Reading reading
                ? new Output.Reading(
                        reading.quantity(),
                        reading.reading(),
                        reading.at().plus(way),
                        reading.facing(),
                        reading.factor())
                : output;
    }

    /** Whether the lamp, its middle at a place, goes through no solid. */
    boolean isClearOf(List<Solid> solids, Vec centre) {
        Vec half = half();
        return solids.stream()
                .noneMatch(solid -> solid.holds(centre) || solid.blocks(centre.minus(half), centre.plus(half)));
    }

    /** Whether the lamp lies within a room from end to end. */
    boolean isWithin(Bounds room, Vec centre) {
        Vec half = half();
        return holds(room, centre.minus(half)) && holds(room, centre.plus(half));
    }

    private static boolean holds(Bounds room, Vec place) {
        Vec above = place.minus(room.least());
        Vec below = room.greatest().minus(place);
        return above.x() >= 0 && above.y() >= 0 && above.z() >= 0 && below.x() >= 0 && below.y() >= 0 && below.z() >= 0;
    }

    /** How near a place is to the middle line of what emits, m. */
    double distance(Vec centre, Vec place) {
        Vec way = place.minus(centre);
        Vec half = half();
        double square = half.dot(half);
        double share = square > 0 ? Math.max(-1, Math.min(1, way.dot(half) / square)) : 0;
        return way.minus(half.times(share)).length();
    }

    /** Half the length of what emits, as a way. */
    private Vec half() {
        Source source = lamp.source();
        Optional<Vec> whole = Optional.empty();
        if (source instanceof Source.Line line) {
            whole = Optional.of(line.along().times(line.length()));
        } else if (source instanceof Source.Cylinder cylinder) {
            whole = Optional.of(cylinder.along().times(cylinder.length()));
        } else if (source instanceof Source.Rectangle panel) {
            whole = Optional.of(panel.along().times(panel.length()));
        }
        return whole.orElse(new Vec(0, 0, 0)).times(0.5);
    }
}
