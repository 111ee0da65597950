package dapple.drawing;

import dapple.light.geometry.Vec;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** An enclosure on paper, without words. */
final class Sketch {
    private static final double BELOW = 46;
    private static final double ABOVE = 50;

    private final EnclosureFigure figure;
    private final CutPlane plane;
    private final Frame frame;
    private final Outline outline;
    private final Optional<FieldMap> map;
    private final List<List<List<Spot>>> lamps;

    Sketch(EnclosureFigure figure, CutPlane plane, Optional<LightFigure> light) {
        this.figure = figure;
        this.plane = plane;
        this.frame = Frame.around(extent(figure, plane), figure.lamps().isEmpty() ? 0 : ABOVE);
        this.outline = new Outline(plane);
        this.map = light.map(found -> FieldMap.of(found.plane(), found.target(), frame));
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

    List<String> lampPaths() {
        return lamps.stream().map(PathText::closed).toList();
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

    /** Covers as lines in a section, as outlines in a plan. */
    List<String> lids() {
        return figure.lids().stream()
                .map(lid -> isPlan()
                        ? PathText.closed(List.of(corners(lid)))
                        : PathText.open(List.of(List.of(
                                spot(new Vec(lid.within().lowX(), 0, lid.heightMetres())),
                                spot(new Vec(lid.within().highX(), 0, lid.heightMetres()))))))
                .toList();
    }

    private List<Spot> corners(EnclosureFigure.Lid lid) {
        var within = lid.within();
        return Stream.of(
                        new Vec(within.lowX(), within.lowY(), 0),
                        new Vec(within.highX(), within.lowY(), 0),
                        new Vec(within.highX(), within.highY(), 0),
                        new Vec(within.lowX(), within.highY(), 0))
                .map(this::spot)
                .toList();
    }

    /** Outlines of what the plane does not cut. */
    List<String> beside() {
        return figure.furniture().stream()
                .filter(solid -> outline.cut(solid).isEmpty())
                .map(solid -> path(outline.seen(solid)))
                .toList();
    }

    List<String> cut() {
        return figure.furniture().stream()
                .map(outline::cut)
                .filter(ring -> !ring.isEmpty())
                .map(this::path)
                .toList();
    }

    private String path(List<Place> ring) {
        return ring.isEmpty()
                ? ""
                : PathText.closed(List.of(ring.stream().map(frame::spot).toList()));
    }

    /** Resting places: the line that a section cuts, the outline in a plan. */
    List<String> restingPlaces() {
        return figure.restingPlaces().stream()
                .map(surface -> surface.corners().stream().map(this::spot).toList())
                .map(round -> isPlan()
                        ? PathText.closed(List.of(round))
                        : PathText.open(List.of(
                                List.of(middle(round.get(0), round.get(3)), middle(round.get(1), round.get(2))))))
                .toList();
    }

    private static Spot middle(Spot one, Spot other) {
        return new Spot((one.x() + other.x()) / 2, (one.y() + other.y()) / 2);
    }
}
