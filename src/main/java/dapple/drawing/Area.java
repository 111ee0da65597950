package dapple.drawing;

import java.util.List;

/** An upright rectangle of a drawing, in its units, y downward. */
public record Area(double left, double top, double width, double height) {
    static Area around(Spot middle, double width, double height) {
        return new Area(middle.x() - width / 2, middle.y() - height / 2, width, height);
    }

    static Area around(List<Spot> spots) {
        double left = spots.stream().mapToDouble(Spot::x).min().orElseThrow();
        double top = spots.stream().mapToDouble(Spot::y).min().orElseThrow();
        double right = spots.stream().mapToDouble(Spot::x).max().orElseThrow();
        double bottom = spots.stream().mapToDouble(Spot::y).max().orElseThrow();
        return new Area(left, top, right - left, bottom - top);
    }

    public double right() {
        return left + width;
    }

    public double bottom() {
        return top + height;
    }

    public double middleX() {
        return left + width / 2;
    }

    public double middleY() {
        return top + height / 2;
    }

    public boolean overlaps(Area other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }

    Area grown(double by) {
        return new Area(left - by, top - by, width + 2 * by, height + 2 * by);
    }

    boolean holds(Spot spot) {
        return spot.x() >= left && spot.x() <= right() && spot.y() >= top && spot.y() <= bottom();
    }

    /** The place in it that is nearest to another. */
    Spot nearest(Spot spot) {
        return new Spot(Math.max(left, Math.min(right(), spot.x())), Math.max(top, Math.min(bottom(), spot.y())));
    }
}
