package dapple.drawing;

import java.util.List;
import java.util.Optional;

/**
 * The words of a drawing in one size of type, and the discs that they belong to.
 *
 * @param type height of the type, in units of the drawing
 * @param points discs, rings and boxes of measuring points
 * @param plates of the points, in their order
 * @param limits beside the lines of the target's limits
 * @param lamps names of lamps
 * @param ticks numbers on the axis
 * @param axis their marks
 */
public record Layer(
        double type,
        List<Dot> points,
        List<Label> plates,
        List<Label> limits,
        List<Label> lamps,
        List<Label> ticks,
        String axis) {
    public Layer {
        points = List.copyOf(points);
        plates = List.copyOf(plates);
        limits = List.copyOf(limits);
        lamps = List.copyOf(lamps);
        ticks = List.copyOf(ticks);
    }

    /** A measuring point at its exact place. */
    public record Dot(EnclosureFigure.Known known, double x, double y, double radius, Optional<Grips.Grip> grip) {
        Area area() {
            return Area.around(new Spot(x, y), 2 * radius, 2 * radius);
        }

        public double left() {
            return x - radius;
        }

        public double top() {
            return y - radius;
        }

        public double width() {
            return 2 * radius;
        }
    }
}
