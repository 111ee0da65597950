package dapple.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds room for words, one after the other: each as near as may be to what it names, on nothing that was taken before,
 * with a free way for its leader. What finds no room goes below the drawing, which then grows.
 */
final class Placement {
    private static final double GAP = 3;
    private static final double EDGE = 2;
    private static final double STEP = 10;
    private static final int DIRECTIONS = 16;
    private static final int ROUNDS = 45;
    private static final int PARTS = 16;

    private final double height;
    private final List<Area> taken = new ArrayList<>();
    private final List<Spot> leaders = new ArrayList<>();

    Placement(double height) {
        this.height = height;
    }

    void take(Area area) {
        taken.add(area);
    }

    /** Room for words of a size beside a place. */
    Area beside(Spot place, Area size, double nearest) {
        return IntStream.range(0, ROUNDS)
                .mapToDouble(round -> nearest + round * STEP)
                .boxed()
                .flatMap(
                        away -> IntStream.range(0, DIRECTIONS).mapToObj(number -> candidate(place, size, away, number)))
                .filter(area -> isFree(area) && isFreeWay(place, area))
                .findFirst()
                .map(area -> taking(place, area))
                .orElseGet(() -> below(size));
    }

    /** Room for words of a size on one of some places, the first that is free. */
    Optional<Area> on(List<Spot> places, Area size) {
        Optional<Area> found = places.stream()
                .map(place -> Area.around(place, size.width(), size.height()))
                .filter(this::isFree)
                .findFirst();
        found.ifPresent(taken::add);
        return found;
    }

    /** Around the place, beginning above it and to both sides in turn. */
    private static Area candidate(Spot place, Area size, double away, int number) {
        int turn = (number + 1) / 2 * (number % 2 == 0 ? 1 : -1);
        double angle = 2 * Math.PI * turn / DIRECTIONS;
        double x = Math.sin(angle);
        double y = -Math.cos(angle);
        Spot middle = new Spot(place.x() + x * (away + size.width() / 2), place.y() + y * (away + size.height() / 2));
        return Area.around(middle, size.width(), size.height());
    }

    private Area taking(Spot place, Area area) {
        taken.add(area);
        leaders.addAll(way(place, area));
        return area;
    }

    private boolean isFree(Area area) {
        return area.left() >= EDGE
                && area.right() <= Frame.WIDTH - EDGE
                && area.top() >= EDGE
                && area.bottom() <= height - EDGE
                && taken.stream().noneMatch(area.grown(GAP)::overlaps)
                && leaders.stream().noneMatch(area::holds);
    }

    /** Whether the leader crosses nothing, once it has left what it begins on. */
    private boolean isFreeWay(Spot place, Area area) {
        return way(place, area).stream()
                .noneMatch(spot ->
                        taken.stream().filter(other -> !other.holds(place)).anyMatch(other -> other.holds(spot)));
    }

    private static List<Spot> way(Spot place, Area area) {
        Spot end = area.nearest(place);
        return IntStream.range(0, PARTS)
                .mapToObj(part -> (double) part / PARTS)
                .map(share ->
                        new Spot(place.x() + share * (end.x() - place.x()), place.y() + share * (end.y() - place.y())))
                .toList();
    }

    private Area below(Area size) {
        double bottom = Math.max(height, bottom());
        Area area = new Area(EDGE + GAP, bottom + GAP, size.width(), size.height());
        taken.add(area);
        return area;
    }

    /** The lowest that anything reaches. */
    double bottom() {
        return taken.stream().mapToDouble(Area::bottom).max().orElse(0);
    }
}
