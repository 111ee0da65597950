package dapple.drawing;

import java.util.List;
import java.util.Optional;

/**
 * The parts of a drawing that can be taken hold of, in the order of the figure; a list that is empty or too short says
 * nothing of the rest.
 */
public record Grips(List<Grip> lamps, List<Grip> furniture, List<Grip> points) {
    public static final Grips NONE = new Grips(List.of(), List.of(), List.of());

    public Grips {
        lamps = List.copyOf(lamps);
        furniture = List.copyOf(furniture);
        points = List.copyOf(points);
    }

    /**
     * One part.
     *
     * @param part what a form calls it, such as lamps[0]
     * @param name with its place, for those who do not see the drawing
     */
    public record Grip(String part, String name) {}

    /** A shape that may be taken hold of. */
    public record Shape(String path, Optional<Grip> grip) {}

    static Optional<Grip> at(List<Grip> grips, int index) {
        return index < grips.size() ? Optional.of(grips.get(index)) : Optional.empty();
    }
}
