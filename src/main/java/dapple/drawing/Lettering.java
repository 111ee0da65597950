package dapple.drawing;

import dapple.drawing.EnclosureFigure.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Puts words on a drawing, in one size of type. */
final class Lettering {
    private static final int LETTERS = 16;
    private static final double DISC = 0.42;
    private static final int ALONG_A_LINE = 24;
    private static final double FAR = 40;
    private static final double TICK = 6;
    private static final double AWAY = 5;

    /** Of a number on the axis, in heights of the type. */
    private static final double ROOM = 4.5;

    private final Sketch sketch;
    private final double type;
    private final Placement placement;

    Lettering(Sketch sketch, double type) {
        this.sketch = sketch;
        this.type = type;
        this.placement = new Placement(sketch.height());
    }

    /** A layer, and how low it reaches. */
    record Lettered(Layer layer, double bottom) {}

    Lettered lettered() {
        double step = step();
        List<Label> ticks = ticks(step);
        ticks.forEach(tick -> placement.take(tick.area()));
        List<Layer.Dot> dots = IntStream.range(0, sketch.figure().points().size())
                .mapToObj(this::dot)
                .toList();
        dots.forEach(dot -> placement.take(dot.area()));
        sketch.lampAreas().forEach(placement::take);
        List<Label> plates = IntStream.range(0, dots.size())
                .mapToObj(index -> plate(sketch.figure().points().get(index), dots.get(index)))
                .toList();
        List<Label> limits = limits();
        List<Label> lamps = IntStream.range(0, sketch.lampAreas().size())
                .mapToObj(index -> lamp(
                        sketch.figure().lamps().get(index), sketch.lampAreas().get(index)))
                .toList();
        return new Lettered(new Layer(type, dots, plates, limits, lamps, ticks, axis(step)), placement.bottom());
    }

    private static String cut(String words) {
        return words.length() <= LETTERS
                ? words
                : words.substring(0, LETTERS - 1).strip() + "…";
    }

    private Layer.Dot dot(int index) {
        Point point = sketch.figure().points().get(index);
        Spot spot = sketch.spot(point.place());
        return new Layer.Dot(point.known(), spot.x(), spot.y(), type * DISC, sketch.gripOfPoint(index));
    }

    private Label plate(Point point, Layer.Dot dot) {
        String words = cut(point.name()) + " " + cut(point.amount());
        Area size = Label.size(words, point.state().isPresent(), type);
        Spot place = new Spot(dot.x(), dot.y());
        Area area = placement.beside(place, size, dot.radius() + type);
        return new Label(words, area, point.state(), Optional.of(leader(place, area)));
    }

    private Label lamp(EnclosureFigure.Lamp lamp, Area shape) {
        String words = cut(lamp.name());
        Area size = Label.size(words, false, type);
        Optional<Area> near = placement.on(around(shape, size), size);
        if (near.isPresent()) {
            return new Label(words, near.get(), Optional.empty(), Optional.empty());
        }
        Spot middle = new Spot(shape.middleX(), shape.middleY());
        Area area = placement.beside(middle, size, shape.height() / 2 + AWAY);
        return new Label(words, area, Optional.empty(), Optional.of(leader(middle, area)));
    }

    /** Middles of words of a size right, left, above and below of a shape. */
    private static List<Spot> around(Area shape, Area size) {
        double aside = AWAY + size.width() / 2;
        double above = AWAY + size.height() / 2;
        double raised = shape.bottom() - size.height() / 2;
        return List.of(
                new Spot(shape.right() + aside, shape.middleY()),
                new Spot(shape.left() - aside, shape.middleY()),
                new Spot(shape.right() + aside, raised),
                new Spot(shape.left() - aside, raised),
                new Spot(shape.middleX(), shape.top() - above),
                new Spot(shape.middleX(), shape.bottom() + above));
    }

    private static String leader(Spot from, Area area) {
        return PathText.open(List.of(List.of(from, area.nearest(from))));
    }

    private List<Label> limits() {
        List<Label> found = new ArrayList<>();
        for (FieldMap.Line line : sketch.lines()) {
            String words = line.words();
            if (!words.isEmpty()) {
                Area size = Label.size(words, false, type);
                placement
                        .on(places(line, size), size)
                        .map(area -> new Label(words, area, Optional.empty(), Optional.empty()))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    /** Places along the longest part of a line, from its middle to both ends, those far from other lines first. */
    private List<Spot> places(FieldMap.Line line, Area size) {
        List<Spot> longest = line.spots().stream()
                .max(Comparator.comparingDouble(Lettering::length))
                .orElse(List.of());
        return IntStream.range(1, ALONG_A_LINE)
                .map(part -> ALONG_A_LINE / 2 + (part % 2 == 0 ? part / 2 : -part / 2))
                .mapToObj(part -> longest.get((longest.size() - 1) * part / ALONG_A_LINE))
                .filter(spot -> isOpen(spot, size.width() / 2))
                .map(spot -> new Far(spot, Math.min(FAR, fromOthers(line, spot))))
                .sorted(Comparator.comparingDouble(Far::units).reversed())
                .map(Far::spot)
                .toList();
    }

    /** How far a spot is from other lines. */
    private record Far(Spot spot, double units) {}

    private boolean isOpen(Spot spot, double aside) {
        return sketch.isOpen(spot)
                && sketch.isOpen(new Spot(spot.x() - aside, spot.y()))
                && sketch.isOpen(new Spot(spot.x() + aside, spot.y()));
    }

    private static double length(List<Spot> line) {
        return IntStream.range(1, line.size())
                .mapToDouble(index -> line.get(index).distance(line.get(index - 1)))
                .sum();
    }

    private double fromOthers(FieldMap.Line line, Spot spot) {
        double least = FAR * FAR;
        for (FieldMap.Line other : sketch.lines()) {
            if (other.amount() != line.amount()) {
                for (List<Spot> part : other.spots()) {
                    least = Math.min(least, leastSquare(part, spot));
                }
            }
        }
        return Math.sqrt(least);
    }

    private static double leastSquare(List<Spot> line, Spot spot) {
        double least = FAR * FAR;
        for (Spot other : line) {
            double across = other.x() - spot.x();
            double down = other.y() - spot.y();
            least = Math.min(least, across * across + down * down);
        }
        return least;
    }

    /** Between the numbers of the axis, m. */
    private double step() {
        return Ticks.step(sketch.acrossMetres(), ROOM * type / sketch.frame().unitsPerMetre());
    }

    private int count(double step) {
        return (int) Math.floor(sketch.acrossMetres() / step + 1e-9);
    }

    private List<Label> ticks(double step) {
        List<Label> ticks = new ArrayList<>();
        for (int index = 0; index <= count(step); index++) {
            String words = words(index * step, step) + (index == count(step) ? " m" : "");
            Area size = Label.size(words, false, type);
            Spot at = new Spot(sketch.frame().x(index * step), sketch.frame().y(0) + TICK + size.height() / 2);
            Area area = Area.around(at, size.width(), size.height());
            ticks.add(new Label(words, inside(area), Optional.empty(), Optional.empty()));
        }
        return ticks;
    }

    private String axis(double step) {
        double floor = sketch.frame().y(0);
        return PathText.open(IntStream.rangeClosed(0, count(step))
                .mapToObj(index -> sketch.frame().x(index * step))
                .map(x -> List.of(new Spot(x, floor), new Spot(x, floor + TICK)))
                .toList());
    }

    private static Area inside(Area area) {
        double left = Math.max(2, Math.min(Frame.WIDTH - 2 - area.width(), area.left()));
        return new Area(left, area.top(), area.width(), area.height());
    }

    private static String words(double metres, double step) {
        return String.format(Locale.ROOT, step < 0.095 ? "%.2f" : step < 0.995 ? "%.1f" : "%.0f", metres);
    }
}
