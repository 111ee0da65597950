package dapple.drawing;

/** A point of a drawing, in its units, y downward. */
public record Spot(double x, double y) {
    double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** The distance from the way between two others. */
    double distance(Spot from, Spot to) {
        double wayX = to.x - from.x;
        double wayY = to.y - from.y;
        double square = wayX * wayX + wayY * wayY;
        double share = square == 0 ? 0 : ((x - from.x) * wayX + (y - from.y) * wayY) / square;
        double nearest = Math.max(0, Math.min(1, share));
        return distance(new Spot(from.x + nearest * wayX, from.y + nearest * wayY));
    }
}
