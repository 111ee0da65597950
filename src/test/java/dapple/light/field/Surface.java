package dapple.light.field;

import dapple.light.geometry.Vec;
import java.util.function.DoubleUnaryOperator;

/** What emits, cut into elements by two shares u and v of 0 to 1, with formulas of its own; its emission is 1. */
interface Surface {
    /** How many of u and v count: 0 for a point, 1 (v) for a line, 2 for a surface. */
    int dimensions();

    Vec place(double u, double v);

    /**
     * Intensity of an element, per share of u and of v.
     *
     * @param direction from the element to the receiver, of length 1
     */
    double intensity(double u, double v, Vec direction);

    /** Differs on both sides of a jump in the intensity. */
    default boolean isBeyondJump(Vec direction) {
        return false;
    }

    /** Distance of a place from what emits, or a little less; m. */
    double distance(Vec place);

    /** A thin diffuse tube. */
    record Tube(Vec centre, Vec along, double length, Vec aim, DoubleUnaryOperator reflector) implements Surface {
        @Override
        public int dimensions() {
            return 1;
        }

        @Override
        public Vec place(double u, double v) {
            return centre.plus(along.times((v - 0.5) * length));
        }

        @Override
        public double intensity(double u, double v, Vec direction) {
            double onAxis = direction.dot(along);
            Vec out = direction.minus(along.times(onAxis));
            return out.length() * reflector.applyAsDouble(out.dot(aim) / out.length()) * length;
        }

        @Override
        public double distance(Vec place) {
            return fromSegment(place.minus(centre), along, length);
        }
    }

    /** A cylinder without ends. */
    record Barrel(Vec centre, Vec along, double length, double radius) implements Surface {
        @Override
        public int dimensions() {
            return 2;
        }

        private Vec face(double u) {
            Vec side = along.anyPerpendicular();
            double angle = 2 * Math.PI * u;
            return side.times(Math.cos(angle)).plus(along.cross(side).times(Math.sin(angle)));
        }

        @Override
        public Vec place(double u, double v) {
            return centre.plus(face(u).times(radius)).plus(along.times((v - 0.5) * length));
        }

        @Override
        public double intensity(double u, double v, Vec direction) {
            return Math.max(0, direction.dot(face(u))) * 2 * Math.PI * radius * length;
        }

        @Override
        public double distance(Vec place) {
            return fromSegment(place.minus(centre), along, length) - radius;
        }
    }

    /** A flat rectangle. */
    record Sheet(Vec centre, Vec along, double length, double width, Vec aim) implements Surface {
        @Override
        public int dimensions() {
            return 2;
        }

        @Override
        public Vec place(double u, double v) {
            return centre.plus(along.times((u - 0.5) * length))
                    .plus(along.cross(aim).times((v - 0.5) * width));
        }

        @Override
        public double intensity(double u, double v, Vec direction) {
            return Math.max(0, direction.dot(aim)) * length * width;
        }

        @Override
        public double distance(Vec place) {
            Vec way = place.minus(centre);
            double x = Math.max(0, Math.abs(way.dot(along)) - length / 2);
            double y = Math.max(0, Math.abs(way.dot(along.cross(aim))) - width / 2);
            return new Vec(x, y, way.dot(aim)).length();
        }
    }

    /**
     * A round face, by rings.
     *
     * @param lobe relative intensity of an element for a cosine of the angle from the aim, times its share
     * @param area what the shares of all elements add up to
     * @param jump cosine at which the lobe jumps to 0; 0 if it does not
     */
    record Round(Vec centre, Vec aim, double radius, DoubleUnaryOperator lobe, double area, double jump)
            implements Surface {
        @Override
        public int dimensions() {
            return 2;
        }

        @Override
        public Vec place(double u, double v) {
            Vec side = aim.anyPerpendicular();
            double angle = 2 * Math.PI * v;
            Vec out = side.times(Math.cos(angle)).plus(aim.cross(side).times(Math.sin(angle)));
            return centre.plus(out.times(radius * u));
        }

        @Override
        public double intensity(double u, double v, Vec direction) {
            return 2 * u * area * lobe.applyAsDouble(direction.dot(aim));
        }

        @Override
        public boolean isBeyondJump(Vec direction) {
            return jump > 0 && direction.dot(aim) < jump;
        }

        @Override
        public double distance(Vec place) {
            Vec way = place.minus(centre);
            double height = way.dot(aim);
            double aside = way.minus(aim.times(height)).length();
            return Math.hypot(height, Math.max(0, aside - radius));
        }
    }

    /** A point. */
    record Spot(Vec centre, Vec aim, DoubleUnaryOperator lobe) implements Surface {
        @Override
        public int dimensions() {
            return 0;
        }

        @Override
        public Vec place(double u, double v) {
            return centre;
        }

        @Override
        public double intensity(double u, double v, Vec direction) {
            return lobe.applyAsDouble(direction.dot(aim));
        }

        @Override
        public double distance(Vec place) {
            return place.minus(centre).length();
        }
    }

    private static double fromSegment(Vec way, Vec along, double length) {
        double onAxis = way.dot(along);
        double beyond = Math.max(0, Math.abs(onAxis) - length / 2);
        return Math.hypot(way.minus(along.times(onAxis)).length(), beyond);
    }
}
