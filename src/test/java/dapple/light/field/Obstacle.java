package dapple.light.field;

import dapple.light.geometry.Box;
import dapple.light.geometry.Capsule;
import dapple.light.geometry.Solid;
import dapple.light.geometry.UprightCylinder;
import dapple.light.geometry.Vec;

/** Something opaque, met by formulas of its own, and the same as the engine knows it. */
interface Obstacle {
    boolean isHit(Vec from, Vec to);

    Solid solid();

    /** The same after a turn about the z axis, or mirrored in x. */
    Obstacle moved(Motion motion);

    /** Whether a place is inside, or nearer than a few tenths of a millimetre. */
    default boolean isNear(Vec place) {
        double near = 3e-4;
        return isHit(place.minus(new Vec(near, 0, 0)), place.plus(new Vec(near, 0, 0)))
                || isHit(place.minus(new Vec(0, near, 0)), place.plus(new Vec(0, near, 0)))
                || isHit(place.minus(new Vec(0, 0, near)), place.plus(new Vec(0, 0, near)));
    }

    /** A turned box, by its six sides one after the other. */
    record BoxObstacle(Vec centre, Vec half, double yawDegrees) implements Obstacle {
        @Override
        public boolean isHit(Vec from, Vec to) {
            Vec a = turned(from);
            Vec b = turned(to);
            double[] start = {a.x(), a.y(), a.z()};
            double[] end = {b.x(), b.y(), b.z()};
            double[] reach = {half.x(), half.y(), half.z()};
            double enter = 0;
            double leave = 1;
            for (int axis = 0; axis < 3; axis++) {
                double way = end[axis] - start[axis];
                if (way == 0 && Math.abs(start[axis]) >= reach[axis]) {
                    return false;
                }
                if (way != 0) {
                    double one = (-reach[axis] - start[axis]) / way;
                    double other = (reach[axis] - start[axis]) / way;
                    enter = Math.max(enter, Math.min(one, other));
                    leave = Math.min(leave, Math.max(one, other));
                }
            }
            return leave - enter > 1e-9;
        }

        private Vec turned(Vec place) {
            double angle = Math.toRadians(-yawDegrees);
            Vec way = place.minus(centre);
            return new Vec(
                    Math.cos(angle) * way.x() - Math.sin(angle) * way.y(),
                    Math.sin(angle) * way.x() + Math.cos(angle) * way.y(),
                    way.z());
        }

        @Override
        public Solid solid() {
            return Box.of(centre.minus(half), centre.plus(half), yawDegrees);
        }

        @Override
        public Obstacle moved(Motion motion) {
            return new BoxObstacle(motion.of(centre), half, motion.ofYaw(yawDegrees));
        }
    }

    /** A rod with round ends: a cylinder and two balls, by quadratic equations. */
    record RodObstacle(Vec from, Vec to, double radius) implements Obstacle {
        @Override
        public boolean isHit(Vec start, Vec end) {
            return ball(from, start, end) || ball(to, start, end) || barrel(start, end);
        }

        private boolean ball(Vec centre, Vec start, Vec end) {
            Vec way = end.minus(start);
            Vec out = start.minus(centre);
            double b = out.dot(way);
            double c = out.dot(out) - radius * radius;
            double root = b * b - way.dot(way) * c;
            double square = way.dot(way);
            return root > 0 && (-b + Math.sqrt(root)) / square > 0 && (-b - Math.sqrt(root)) / square < 1;
        }

        private boolean barrel(Vec start, Vec end) {
            Vec axis = to.minus(from);
            Vec way = end.minus(start);
            Vec acrossWay = axis.cross(way);
            Vec acrossOut = axis.cross(start.minus(from));
            double a = acrossWay.dot(acrossWay);
            double b = acrossWay.dot(acrossOut);
            double c = acrossOut.dot(acrossOut) - radius * radius * axis.dot(axis);
            double root = b * b - a * c;
            if (!(root > 0)) {
                return false;
            }
            return within(start, way, axis, (-b - Math.sqrt(root)) / a)
                    || within(start, way, axis, (-b + Math.sqrt(root)) / a);
        }

        private boolean within(Vec start, Vec way, Vec axis, double share) {
            double onAxis = start.plus(way.times(share)).minus(from).dot(axis) / axis.dot(axis);
            return share > 0 && share < 1 && onAxis > 0 && onAxis < 1;
        }

        @Override
        public Solid solid() {
            return Capsule.of(from, to, radius);
        }

        @Override
        public Obstacle moved(Motion motion) {
            return new RodObstacle(motion.of(from), motion.of(to), radius);
        }
    }

    /** A standing cylinder, by its barrel and its two ends. */
    record PostObstacle(Vec base, double height, double radius) implements Obstacle {
        @Override
        public boolean isHit(Vec start, Vec end) {
            Vec way = end.minus(start);
            double outX = start.x() - base.x();
            double outY = start.y() - base.y();
            double a = way.x() * way.x() + way.y() * way.y();
            double b = outX * way.x() + outY * way.y();
            double c = outX * outX + outY * outY - radius * radius;
            double root = b * b - a * c;
            if (!(a == 0 ? c < 0 : root > 0)) {
                return false;
            }
            double enter = a == 0 ? 0 : Math.max(0, (-b - Math.sqrt(root)) / a);
            double leave = a == 0 ? 1 : Math.min(1, (-b + Math.sqrt(root)) / a);
            if (way.z() == 0) {
                return start.z() > base.z() && start.z() < base.z() + height && leave > enter;
            }
            double one = (base.z() - start.z()) / way.z();
            double other = (base.z() + height - start.z()) / way.z();
            return Math.min(leave, Math.max(one, other)) - Math.max(enter, Math.min(one, other)) > 1e-9;
        }

        @Override
        public Solid solid() {
            return UprightCylinder.of(base, height, radius);
        }

        @Override
        public Obstacle moved(Motion motion) {
            return new PostObstacle(motion.of(base), height, radius);
        }
    }
}
