package dapple.rig;

import dapple.enclosure.InnerSize;
import dapple.light.cover.Filter.Rectangle;
import dapple.light.geometry.Vec;
import dapple.light.zone.RestingSurface;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.FurnitureShape.Post;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The level places that animals rest on: the floor, and the tops of boxes and cylinders; of a box that is turned, and of a
 * cylinder, the largest rectangle of their own proportions that fits on it along the walls. Branches have no level top.
 */
final class Surfaces {
    private Surfaces() {}

    static List<RestingSurface> of(InnerSize size, List<FurnitureFacts> furniture) {
        List<RestingSurface> surfaces = new ArrayList<>();
        surfaces.add(level(0, new Rectangle(0, 0, size.widthMetres(), size.depthMetres())));
        furniture.stream()
                .map(FurnitureFacts::furniture)
                .filter(Furniture::isRestedOn)
                .forEach(item -> top(item.shape()).ifPresent(surfaces::add));
        return surfaces;
    }

    private static RestingSurface level(double height, Rectangle within) {
        return new RestingSurface(new Vec(0, 0, height), Vec.UP, within);
    }

    private static Optional<RestingSurface> top(FurnitureShape shape) {
        if (shape instanceof Block block) {
            return Optional.of(level(block.greatest().z(), inner(block)));
        }
        if (shape instanceof Post post) {
            double half = post.radiusMetres() / Math.sqrt(2);
            return Optional.of(level(post.base().z() + post.heightMetres(), around(post.base(), half, half)));
        }
        return Optional.empty();
    }

    /** The same rectangle shrunk by k, so that its corners stay on the turned one: k(a·cos + b·sin) ≤ a, and so for b. */
    private static Rectangle inner(Block block) {
        Vec half = block.greatest().minus(block.least()).times(0.5);
        double cos = Math.abs(Math.cos(Math.toRadians(block.yawDegrees())));
        double sin = Math.abs(Math.sin(Math.toRadians(block.yawDegrees())));
        double shrunk =
                Math.min(half.x() / (half.x() * cos + half.y() * sin), half.y() / (half.x() * sin + half.y() * cos));
        Vec middle = block.least().plus(half);
        return around(middle, half.x() * shrunk, half.y() * shrunk);
    }

    private static Rectangle around(Vec middle, double halfX, double halfY) {
        return new Rectangle(middle.x() - halfX, middle.y() - halfY, middle.x() + halfX, middle.y() + halfY);
    }
}
