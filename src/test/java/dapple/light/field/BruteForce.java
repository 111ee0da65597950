package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Source;
import java.util.List;

/**
 * A second implementation of the field, as plain as can be: a source is cut into very many small elements, each looked
 * at by itself. Solids are met by its own formulas, filters crossed by its own.
 */
final class BruteForce {
    private final int across;
    private final int along;
    private final List<Obstacle> obstacles;
    private final List<Filter> filters;

    BruteForce(int across, int along, List<Obstacle> obstacles, List<Filter> filters) {
        this.across = across;
        this.along = along;
        this.obstacles = obstacles;
        this.filters = filters;
    }

    /** What falls on a plane: with everything between, and with filters alone. */
    Sums on(Vec place, Vec normal, Vec aim, Source source) {
        double seen = 0;
        double unshaded = 0;
        for (int column = 0; column < across; column++) {
            for (int row = 0; row < along; row++) {
                Element element = Element.of(source, aim, (column + 0.5) / across, (row + 0.5) / along);
                Vec way = element.place().minus(place);
                double distance = way.length();
                Vec direction = way.times(1 / distance);
                double light = element.intensity(direction.times(-1))
                        / across
                        / along
                        * Math.max(0, direction.dot(normal))
                        / (distance * distance);
                if (light > 0) {
                    light *= passed(place, element.place(), direction);
                    unshaded += light;
                    seen += isHidden(place, element.place()) ? 0 : light;
                }
            }
        }
        return new Sums(seen, unshaded);
    }

    private boolean isHidden(Vec from, Vec to) {
        return obstacles.stream().anyMatch(obstacle -> obstacle.isHit(from, to));
    }

    private double passed(Vec from, Vec to, Vec direction) {
        double share = 1;
        for (Filter filter : filters) {
            Vec point = filter.plane().point();
            Vec normal = filter.plane().normal();
            double start = from.minus(point).dot(normal);
            double end = to.minus(point).dot(normal);
            Vec crossing = from.plus(to.minus(from).times(start / (start - end)));
            boolean inside = filter.plane()
                    .over()
                    .map(over -> crossing.x() > over.lowX()
                            && crossing.x() < over.highX()
                            && crossing.y() > over.lowY()
                            && crossing.y() < over.highY())
                    .orElse(true);
            if (start * end < 0 && inside) {
                share *= filter.transmittance(Quantity.UV_INDEX, direction);
            }
        }
        return share;
    }

    /** What falls on a plane, and what would without solids. */
    record Sums(double seen, double unshaded) {}

    /** Something opaque, met by a formula of its own. */
    interface Obstacle {
        boolean isHit(Vec from, Vec to);
    }

    /** A turned box, by its six sides one after the other. */
    record BoxObstacle(Vec least, Vec greatest, double yawDegrees) implements Obstacle {
        @Override
        public boolean isHit(Vec from, Vec to) {
            Vec a = turned(from);
            Vec b = turned(to);
            double[] start = {a.x(), a.y(), a.z()};
            double[] end = {b.x(), b.y(), b.z()};
            double[] low = {least.x(), least.y(), least.z()};
            double[] high = {greatest.x(), greatest.y(), greatest.z()};
            double enter = 0;
            double leave = 1;
            for (int axis = 0; axis < 3; axis++) {
                double way = end[axis] - start[axis];
                double one = (low[axis] - start[axis]) / way;
                double other = (high[axis] - start[axis]) / way;
                enter = Math.max(enter, Math.min(one, other));
                leave = Math.min(leave, Math.max(one, other));
            }
            return leave - enter > 1e-9;
        }

        private Vec turned(Vec place) {
            Vec centre = least.plus(greatest).times(0.5);
            double angle = Math.toRadians(-yawDegrees);
            double x = place.x() - centre.x();
            double y = place.y() - centre.y();
            return new Vec(
                    centre.x() + Math.cos(angle) * x - Math.sin(angle) * y,
                    centre.y() + Math.sin(angle) * x + Math.cos(angle) * y,
                    place.z());
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
            if (!(root > 0)) {
                return false;
            }
            double enter = Math.max(0, (-b - Math.sqrt(root)) / a);
            double leave = Math.min(1, (-b + Math.sqrt(root)) / a);
            double one = (base.z() - start.z()) / way.z();
            double other = (base.z() + height - start.z()) / way.z();
            return Math.min(leave, Math.max(one, other)) - Math.max(enter, Math.min(one, other)) > 1e-9;
        }
    }

    /** A small piece of a source: its place, and its intensity towards a direction. */
    private record Element(Vec place, Source source, Vec face, Vec aim) {
        static Element of(Source source, Vec aim, double u, double v) {
            if (source instanceof Source.Line line) {
                return new Element(line.along().times((v - 0.5) * line.length()), source, aim, aim);
            }
            if (source instanceof Source.Cylinder cylinder) {
                Vec side = cylinder.along().anyPerpendicular();
                Vec face = side.times(Math.cos(2 * Math.PI * u))
                        .plus(cylinder.along().cross(side).times(Math.sin(2 * Math.PI * u)));
                Vec place = face.times(cylinder.radius()).plus(cylinder.along().times((v - 0.5) * cylinder.length()));
                return new Element(place, source, face, aim);
            }
            if (source instanceof Source.Rectangle rectangle) {
                Vec place = rectangle
                        .along()
                        .times((u - 0.5) * rectangle.length())
                        .plus(aim.cross(rectangle.along()).times((v - 0.5) * rectangle.width()));
                return new Element(place, source, aim, aim);
            }
            double radius = source instanceof Source.Disc disc
                    ? disc.radius()
                    : source instanceof Source.Face face ? face.radius() : 0;
            Vec side = aim.anyPerpendicular();
            double out = radius * Math.sqrt(u);
            Vec place = side.times(out * Math.cos(2 * Math.PI * v))
                    .plus(aim.cross(side).times(out * Math.sin(2 * Math.PI * v)));
            return new Element(place, source, aim, aim);
        }

        double intensity(Vec direction) {
            double cosine = Math.max(0, direction.dot(face));
            if (source instanceof Source.Line line) {
                double onAxis = direction.dot(line.along());
                Vec out = direction.minus(line.along().times(onAxis));
                double towards = line.reflector()
                        .map(reflector -> reflector.spill()
                                + (1 - reflector.spill())
                                        * Math.pow(Math.max(0, out.dot(aim) / out.length()), reflector.lobe()))
                        .orElse(1.0);
                return Math.sqrt(1 - onAxis * onAxis) * towards * line.length();
            }
            if (source instanceof Source.Cylinder cylinder) {
                return cosine * 2 * Math.PI * cylinder.radius() * cylinder.length();
            }
            if (source instanceof Source.Rectangle rectangle) {
                return cosine * rectangle.length() * rectangle.width();
            }
            if (source instanceof Source.Disc disc) {
                return cosine * Math.PI * disc.radius() * disc.radius();
            }
            return source instanceof Source.Face beamed
                    ? beamed.beam().towards(cosine)
                    : ((Source.Spot) source).beam().towards(cosine);
        }
    }
}
