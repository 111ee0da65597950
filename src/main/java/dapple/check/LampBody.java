package dapple.check;

import dapple.lamp.LampShape;
import dapple.light.geometry.Vec;
import dapple.rig.Cover;
import dapple.rig.FittingFacts;
import dapple.rig.FurnitureShape;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.FurnitureShape.Branch;
import dapple.rig.FurnitureShape.Post;
import dapple.rig.Mount;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What of a lamp may set things alight: what emits, as its shape says, looked at every centimetre. Sockets and housings are
 * not known.
 *
 * @param radiusMetres around the places
 */
record LampBody(List<Vec> places, double radiusMetres) {
    private static final double STEP_METRES = 0.01;
    private static final int AROUND = 16;

    /** Empty where place, shape or direction is not known. */
    static Optional<LampBody> of(FittingFacts fitting) {
        return fitting.hanging()
                .mount()
                .flatMap(mount -> fitting.lamp().model().shape().flatMap(shape -> of(shape, mount)));
    }

    private static Optional<LampBody> of(LampShape shape, Mount mount) {
        if (shape instanceof LampShape.Line line) {
            return mount.along().map(way -> new LampBody(row(mount.centre(), way, line.lengthMetres()), 0));
        }
        if (shape instanceof LampShape.Cylinder tube) {
            return mount.along()
                    .map(way -> new LampBody(row(mount.centre(), way, tube.lengthMetres()), tube.radiusMetres()));
        }
        if (shape instanceof LampShape.Panel panel) {
            return mount.along().map(way -> new LampBody(face(mount, way, panel), 0));
        }
        return Optional.of(new LampBody(rim(mount, radius(shape)), 0));
    }

    private static double radius(LampShape shape) {
        if (shape instanceof LampShape.Disc disc) {
            return disc.radiusMetres();
        }
        Optional<Double> radius = shape instanceof LampShape.Measured measured
                ? measured.radiusMetres()
                : ((LampShape.Spot) shape).radiusMetres();
        return radius.orElse(0.0);
    }

    private static List<Vec> row(Vec centre, Vec way, double length) {
        int steps = (int) Math.ceil(length / STEP_METRES);
        return IntStream.rangeClosed(0, steps)
                .mapToObj(at -> centre.plus(way.times(length * ((double) at / steps - 0.5))))
                .toList();
    }

    private static List<Vec> face(Mount mount, Vec along, LampShape.Panel panel) {
        Vec across = along.cross(mount.aim()).unit();
        return row(mount.centre(), across, panel.widthMetres()).stream()
                .flatMap(middle -> row(middle, along, panel.lengthMetres()).stream())
                .toList();
    }

    private static List<Vec> rim(Mount mount, double radius) {
        Vec one = mount.aim().anyPerpendicular();
        Vec other = mount.aim().cross(one);
        Stream<Vec> around = IntStream.range(0, AROUND)
                .mapToDouble(at -> 2 * Math.PI * at / AROUND)
                .mapToObj(angle -> mount.centre()
                        .plus(one.times(radius * Math.cos(angle)))
                        .plus(other.times(radius * Math.sin(angle))));
        return Stream.concat(Stream.of(mount.centre()), around).toList();
    }

    /** How far it is from a piece of furniture, m; 0 where they touch. */
    double distance(FurnitureShape shape) {
        if (shape instanceof Block block) {
            return least(place -> distance(place, block));
        }
        return shape instanceof Post post
                ? least(place -> distance(place, post))
                : least(place -> distance(place, (Branch) shape));
    }

    /** How far it is from a cover that lies at a height, m. */
    double distance(Cover cover, double height) {
        return least(place -> Math.hypot(
                place.z() - height,
                cover.over()
                        .map(over -> Math.hypot(
                                outside(place.x(), over.lowX(), over.highX()),
                                outside(place.y(), over.lowY(), over.highY())))
                        .orElse(0.0)));
    }

    private double least(ToDoubleFunction<Vec> distance) {
        double nearest = places.stream().mapToDouble(distance).min().orElse(Double.POSITIVE_INFINITY);
        return Math.max(0, nearest - radiusMetres);
    }

    private static double distance(Vec place, Block block) {
        Vec middle = block.least().plus(block.greatest()).times(0.5);
        Vec half = block.greatest().minus(block.least()).times(0.5);
        Vec way = place.minus(middle);
        double cos = Math.cos(Math.toRadians(block.yawDegrees()));
        double sin = Math.sin(Math.toRadians(block.yawDegrees()));
        return new Vec(
                        outside(way.x() * cos + way.y() * sin, -half.x(), half.x()),
                        outside(way.y() * cos - way.x() * sin, -half.y(), half.y()),
                        outside(way.z(), -half.z(), half.z()))
                .length();
    }

    private static double distance(Vec place, Post post) {
        double aside =
                Math.hypot(place.x() - post.base().x(), place.y() - post.base().y());
        return Math.hypot(
                outside(aside, 0, post.radiusMetres()),
                outside(place.z(), post.base().z(), post.base().z() + post.heightMetres()));
    }

    private static double distance(Vec place, Branch branch) {
        Vec axis = branch.to().minus(branch.from());
        double square = axis.dot(axis);
        double at = square > 0 ? place.minus(branch.from()).dot(axis) / square : 0;
        Vec nearest = branch.from().plus(axis.times(Math.max(0, Math.min(1, at))));
        return Math.max(0, place.minus(nearest).length() - branch.radiusMetres());
    }

    private static double outside(double at, double low, double high) {
        return Math.max(0, Math.max(low - at, at - high));
    }
}
