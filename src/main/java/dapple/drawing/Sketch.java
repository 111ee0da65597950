package dapple.drawing;

import dapple.drawing.Grips.Shape;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** An enclosure on paper, without words. */
final class Sketch {
    private static final double BELOW = 46;
    private static final double ABOVE = 50;

    private final EnclosureFigure figure;
    private final CutPlane plane;
    private final Frame frame;
    private final Grips grips;
    private final Outline outline;
    private final Optional<FieldMap> map;
    private final List<List<List<Spot>>> lamps;

    Sketch(EnclosureFigure figure, CutPlane plane, Optional<LightFigure> light, Grips grips) {
        this.figure = figure;
        this.plane = plane;
        this.grips = grips;
        this.frame = Frame.around(extent(figure, plane), figure.lamps().isEmpty() ? 0 : ABOVE);
        this.outline = new Outline(plane);
        this.map = light.map(found -> FieldMap.of(found, frame));
        LampShape shape = new LampShape(plane, frame);
        this.lamps = figure.lamps().stream().map(shape::of).toList();
    }

    private static List<Place> extent(EnclosureFigure figure, CutPlane plane) {
        return Stream.of(
                        Stream.of(new Vec(0, 0, 0), figure.inside()),
                        figure.lamps().stream().flatMap(lamp -> LampShape.extent(lamp).stream()),
                        figure.points().stream().map(EnclosureFigure.Point::place))
                .flatMap(places -> places)
                .map(plane::on)
                .toList();
    }

    boolean isPlan() {
        return plane instanceof Plan;
    }

    EnclosureFigure figure() {
        return figure;
    }

    Frame frame() {
        return frame;
    }

    double height() {
        return frame.bottom() + BELOW;
    }

    double acrossMetres() {
        return figure.inside().x();
    }

    Optional<FieldMap> map() {
        return map;
    }

    List<FieldMap.Line> lines() {
        return map.map(FieldMap::lines).orElse(List.of());
    }

    Spot spot(Vec place) {
        return frame.spot(plane.on(place));
    }

    /** Whether a spot of the drawing lies in no solid. */
    boolean isOpen(Spot spot) {
        Vec place = plane.in(new Place(
                frame.from().acrossMetres() + (spot.x() - frame.left()) / frame.unitsPerMetre(),
                frame.from().upMetres() + (frame.bottom() - spot.y()) / frame.unitsPerMetre()));
        return figure.furniture().stream().noneMatch(solid -> solid.holds(place));
    }

    List<Area> lampAreas() {
        return lamps.stream()
                .map(rings -> Area.around(rings.stream().flatMap(List::stream).toList()))
                .toList();
    }

    List<Shape> lampShapes() {
        return IntStream.range(0, lamps.size())
                .mapToObj(index -> new Shape(PathText.closed(lamps.get(index)), Grips.at(grips.lamps(), index)))
                .toList();
    }

    Optional<Grips.Grip> gripOfPoint(int index) {
        return Grips.at(grips.points(), index);
    }

    Drawing.Scale scale() {
        double off = plane.in(new Place(0, 0)).dot(isPlan() ? Vec.UP : new Vec(0, 1, 0));
        return new Drawing.Scale(frame.x(0), frame.y(0), frame.unitsPerMetre(), off);
    }

    /** The room's walls: left, floor and right of a section, all four of a plan. */
    String walls() {
        Place far = plane.on(figure.inside());
        List<Spot> round = Stream.of(
                        new Place(0, far.upMetres()),
                        new Place(0, 0),
                        new Place(far.acrossMetres(), 0),
                        new Place(far.acrossMetres(), far.upMetres()))
                .map(frame::spot)
                .toList();
        return isPlan() ? PathText.closed(List.of(round)) : PathText.open(List.of(round));
    }

    List<String> lids() {
        return figure.lids().stream()
                .flatMap(lid -> patch(corners(lid)).stream())
                .toList();
    }

    private static List<Vec> corners(EnclosureFigure.Lid lid) {
        var within = lid.within();
        return List.of(
                new Vec(within.lowX(), within.lowY(), lid.heightMetres()),
                new Vec(within.highX(), within.lowY(), lid.heightMetres()),
                new Vec(within.highX(), within.highY(), lid.heightMetres()),
                new Vec(within.lowX(), within.highY(), lid.heightMetres()));
    }

    List<String> restingPlaces() {
        return figure.restingPlaces().stream()
                .flatMap(surface -> patch(surface.corners()).stream())
                .toList();
    }

    /** What is flat: from above its outline, in a section the line in which the plane cuts it, if it does. */
    private Optional<String> patch(List<Vec> corners) {
        if (isPlan()) {
            return Optional.of(
                    PathText.closed(List.of(corners.stream().map(this::spot).toList())));
        }
        double front = plane.off(corners.get(0));
        double back = plane.off(corners.get(3));
        if (front * back > 0) {
            return Optional.empty();
        }
        double share = front / (front - back);
        Spot left = spot(between(corners.get(0), corners.get(3), share));
        Spot right = spot(between(corners.get(1), corners.get(2), share));
        return Optional.of(PathText.open(List.of(List.of(left, right))));
    }

    private static Vec between(Vec one, Vec other, double share) {
        return one.plus(other.minus(one).times(share));
    }

    /** Outlines of what the plane does not cut. */
    List<Shape> beside() {
        return furniture(solid -> outline.cut(solid).isEmpty(), outline::seen);
    }

    List<Shape> cut() {
        return furniture(solid -> !outline.cut(solid).isEmpty(), outline::cut);
    }

    private List<Shape> furniture(Predicate<Solid> isDrawn, Function<Solid, List<Place>> ring) {
        List<Solid> solids = figure.furniture();
        return IntStream.range(0, solids.size())
                .filter(index -> isDrawn.test(solids.get(index)))
                .mapToObj(index -> new Shape(path(ring.apply(solids.get(index))), Grips.at(grips.furniture(), index)))
                .toList();
    }

    private String path(List<Place> ring) {
        return ring.isEmpty()
                ? ""
                : PathText.closed(List.of(ring.stream().map(frame::spot).toList()));
    }
}
