package dapple.light.geometry;

/**
 * A place or a direction: x to the right, y away from the front, z up; metres for a place.
 *
 * <p>Components are not checked, so that the engine can compute with it freely; a scene checks what it is given.
 */
public record Vec(double x, double y, double z) {
    public static final Vec UP = new Vec(0, 0, 1);

    public Vec plus(Vec other) {
        return new Vec(x + other.x, y + other.y, z + other.z);
    }

    public Vec minus(Vec other) {
        return new Vec(x - other.x, y - other.y, z - other.z);
    }

    public Vec times(double factor) {
        return new Vec(factor * x, factor * y, factor * z);
    }

    public double dot(Vec other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vec cross(Vec other) {
        return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /**
     * The same direction, of length 1.
     *
     * @throws IllegalArgumentException if the length is 0, infinite or NaN
     */
    public Vec unit() {
        double largest = Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
        if (!(largest > 0 && largest < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a direction must have a length, was " + this);
        }
        Vec scaled = new Vec(x / largest, y / largest, z / largest);
        return scaled.times(1 / scaled.length());
    }

    /** A direction perpendicular to this one, of length 1. */
    public Vec anyPerpendicular() {
        Vec least = Math.abs(x) <= Math.abs(y) && Math.abs(x) <= Math.abs(z)
                ? new Vec(1, 0, 0)
                : Math.abs(y) <= Math.abs(z) ? new Vec(0, 1, 0) : UP;
        return cross(least).unit();
    }

    public boolean isFinite() {
        return Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
    }
}
