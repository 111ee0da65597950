package dapple.drawing;

import dapple.light.geometry.Vec;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * A lamp by the kind of its source: a tube as a bar with end caps, a panel as a flat housing, a spot or a round face as a
 * bowl that opens towards its aim. Along its length it is to scale; it is never drawn thinner than can be seen.
 */
final class LampShape {
    private static final double LEAST_TUBE = 4;
    private static final double CAP = 7;
    private static final double HOUSING = 8;
    private static final double LEAST_MOUTH = 10;
    private static final double BOWL = 17;
    private static final double NECK = 0.45;

    /** The shortest way on paper that still has a direction, m. */
    private static final double SHORT = 1e-6;

    private final CutPlane plane;
    private final Frame frame;

    LampShape(CutPlane plane, Frame frame) {
        this.plane = plane;
        this.frame = frame;
    }

    /** The rings that make up a lamp. */
    List<List<Spot>> of(EnclosureFigure.Lamp lamp) {
        Source source = lamp.source();
        if (source instanceof Source.Rectangle panel) {
            return List.of(panel(lamp, panel));
        }
        if (source instanceof Source.Line || source instanceof Source.Cylinder) {
            double radius = source instanceof Source.Cylinder tube ? units(tube.radius()) : 0;
            return tube(lamp.centre(), half(source), Math.max(LEAST_TUBE, radius));
        }
        return List.of(bowl(lamp, half(source).x()));
    }

    /** The places that the frame must hold. */
    static List<Vec> extent(EnclosureFigure.Lamp lamp) {
        Vec half = half(lamp.source());
        return List.of(lamp.centre().minus(half), lamp.centre().plus(half));
    }

    /** From the middle to an end of what is long; of what is round its radius along x. */
    private static Vec half(Source source) {
        if (source instanceof Source.Line line) {
            return line.along().times(line.length() / 2);
        }
        if (source instanceof Source.Cylinder tube) {
            return tube.along().times(tube.length() / 2);
        }
        if (source instanceof Source.Rectangle panel) {
            return panel.along().times(panel.length() / 2);
        }
        if (source instanceof Source.Disc disc) {
            return new Vec(disc.radius(), 0, 0);
        }
        return new Vec(source instanceof Source.Face face ? face.radius() : 0, 0, 0);
    }

    private double units(double metres) {
        return metres * frame.unitsPerMetre();
    }

    private Spot spot(Vec place) {
        return frame.spot(plane.on(place));
    }

    /** A direction on paper, y downward; none of what points at the reader. */
    private Spot way(Vec direction) {
        Place on = plane.on(direction);
        double length = Math.hypot(on.acrossMetres(), on.upMetres());
        return length < SHORT ? new Spot(0, 0) : new Spot(on.acrossMetres() / length, -on.upMetres() / length);
    }

    private List<List<Spot>> tube(Vec centre, Vec half, double radius) {
        Spot way = way(half);
        Spot from = spot(centre.minus(half));
        Spot to = spot(centre.plus(half));
        if (way.x() == 0 && way.y() == 0) {
            return List.of(round(from, radius + 1));
        }
        List<List<Spot>> rings = new ArrayList<>();
        rings.add(bar(from, to, radius));
        rings.add(bar(from, moved(from, way, CAP), radius + 1));
        rings.add(bar(moved(to, way, -CAP), to, radius + 1));
        return rings;
    }

    private List<Spot> panel(EnclosureFigure.Lamp lamp, Source.Rectangle panel) {
        Vec half = panel.along().times(panel.length() / 2);
        Vec across = lamp.aim().cross(panel.along()).unit().times(panel.width() / 2);
        List<Place> corners = new ArrayList<>();
        for (Vec side : List.of(half.plus(across), half.minus(across))) {
            corners.add(plane.on(lamp.centre().plus(side)));
            corners.add(plane.on(lamp.centre().minus(side)));
        }
        List<Place> ring = Outline.ring(corners);
        double left = corners.stream().mapToDouble(Place::acrossMetres).min().orElseThrow();
        double right = corners.stream().mapToDouble(Place::acrossMetres).max().orElseThrow();
        if (!ring.isEmpty()) {
            return ring.stream().map(frame::spot).toList();
        }
        Spot back = way(lamp.aim());
        Spot middle = moved(spot(lamp.centre()), back, -HOUSING / 2);
        double reach = (right - left) / 2 * frame.unitsPerMetre();
        return bar(new Spot(middle.x() - reach, middle.y()), new Spot(middle.x() + reach, middle.y()), HOUSING / 2);
    }

    private List<Spot> bowl(EnclosureFigure.Lamp lamp, double radius) {
        double mouth = Math.max(LEAST_MOUTH, units(radius));
        Spot middle = spot(lamp.centre());
        Spot aim = way(lamp.aim());
        if (aim.x() == 0 && aim.y() == 0) {
            return round(middle, mouth);
        }
        Spot side = new Spot(-aim.y(), aim.x());
        Spot neck = moved(middle, aim, -BOWL * 0.6);
        Spot back = moved(middle, aim, -BOWL);
        return List.of(
                moved(middle, side, mouth),
                moved(neck, side, mouth * NECK),
                moved(back, side, mouth * NECK),
                moved(back, side, -mouth * NECK),
                moved(neck, side, -mouth * NECK),
                moved(middle, side, -mouth));
    }

    private static Spot moved(Spot spot, Spot way, double by) {
        return new Spot(spot.x() + way.x() * by, spot.y() + way.y() * by);
    }

    private static List<Spot> bar(Spot from, Spot to, double half) {
        double length = Math.max(from.distance(to), 1e-9);
        Spot side = new Spot(-(to.y() - from.y()) / length, (to.x() - from.x()) / length);
        return List.of(
                moved(from, side, half), moved(to, side, half), moved(to, side, -half), moved(from, side, -half));
    }

    private static List<Spot> round(Spot middle, double radius) {
        List<Spot> ring = new ArrayList<>();
        for (int side = 0; side < 24; side++) {
            double angle = Math.PI * side / 12;
            ring.add(new Spot(middle.x() + radius * Math.cos(angle), middle.y() + radius * Math.sin(angle)));
        }
        return ring;
    }
}
