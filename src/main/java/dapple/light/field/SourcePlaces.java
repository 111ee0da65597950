package dapple.light.field;

import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;

/** Where a source emits from, as straight lines: exact for a point and a line, 64 lines across a surface. */
public final class SourcePlaces {
    private static final int ACROSS = 64;

    private SourcePlaces() {}

    /** Whether a place lies on a point or a line that emits, where light has no finite amount. */
    public static boolean isOn(Lamp lamp, Vec place) {
        Vec way = place.minus(lamp.centre());
        if (lamp.source() instanceof Source.Line line) {
            double along = Math.max(-line.length() / 2, Math.min(line.length() / 2, way.dot(line.along())));
            return way.minus(line.along().times(along)).length() < Solid.TOUCH;
        }
        return lamp.source() instanceof Source.Spot && way.length() < Solid.TOUCH;
    }

    /** Whether light has a finite amount at a place: it lies on no source and in no solid. */
    public static boolean isOpen(Scene scene, Vec place) {
        return scene.lamps().stream().noneMatch(lamp -> isOn(lamp, place)) && scene.solidAround(place) < 0;
    }

    /** Whether any of a lamp's places lies or leads inside one of some solids. */
    public static boolean anyInside(Lamp lamp, List<Solid> solids) {
        List<Segment> segments = segments(lamp);
        return solids.stream()
                .anyMatch(solid -> segments.stream()
                        .anyMatch(
                                segment -> solid.holds(segment.from()) || solid.blocks(segment.from(), segment.to())));
    }

    private static List<Segment> segments(Lamp lamp) {
        Source source = lamp.source();
        if (source instanceof Source.Line line) {
            return List.of(Segment.around(lamp.centre(), half(line.along(), line.length())));
        }
        if (source instanceof Source.Cylinder cylinder) {
            return cylinder(lamp.centre(), cylinder);
        }
        if (source instanceof Source.Rectangle rectangle) {
            return rectangle(lamp, rectangle);
        }
        if (source instanceof Source.Disc disc) {
            return disc(lamp, disc.radius());
        }
        return source instanceof Source.Face face
                ? disc(lamp, face.radius())
                : List.of(new Segment(lamp.centre(), lamp.centre()));
    }

    private static Vec half(Vec along, double length) {
        return along.times(length / 2);
    }

    private static List<Segment> cylinder(Vec centre, Source.Cylinder cylinder) {
        Vec side = cylinder.along().anyPerpendicular();
        Vec other = cylinder.along().cross(side);
        List<Segment> segments = new ArrayList<>();
        for (int part = 0; part < ACROSS; part++) {
            double angle = 2 * Math.PI * part / ACROSS;
            Vec out = side.times(Math.cos(angle)).plus(other.times(Math.sin(angle)));
            Vec middle = centre.plus(out.times(cylinder.radius()));
            segments.add(Segment.around(middle, half(cylinder.along(), cylinder.length())));
        }
        return segments;
    }

    private static List<Segment> rectangle(Lamp lamp, Source.Rectangle rectangle) {
        Vec across = lamp.aim().cross(rectangle.along()).unit();
        List<Segment> segments = new ArrayList<>();
        for (int part = 0; part <= ACROSS; part++) {
            Vec middle = lamp.centre().plus(across.times(rectangle.width() * ((double) part / ACROSS - 0.5)));
            segments.add(Segment.around(middle, half(rectangle.along(), rectangle.length())));
        }
        return segments;
    }

    private static List<Segment> disc(Lamp lamp, double radius) {
        Vec side = lamp.aim().anyPerpendicular();
        Vec other = lamp.aim().cross(side);
        List<Segment> segments = new ArrayList<>();
        for (int part = 0; part <= ACROSS; part++) {
            double out = 2.0 * part / ACROSS - 1;
            Vec middle = lamp.centre().plus(side.times(radius * out));
            segments.add(Segment.around(middle, other.times(radius * Math.sqrt(1 - out * out))));
        }
        return segments;
    }

    private record Segment(Vec from, Vec to) {
        static Segment around(Vec middle, Vec half) {
            return new Segment(middle.minus(half), middle.plus(half));
        }
    }
}
