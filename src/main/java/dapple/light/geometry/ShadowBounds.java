package dapple.light.geometry;

import dapple.light.geometry.Hull.Edge;
import java.util.ArrayList;
import java.util.List;

/**
 * The places from which a solid may hide any part of a lamp. With a lamp A and a solid B, both convex, that region is B
 * and all that lies behind it seen from any point of A: {b + t (b − a), t ≥ 0}, which is convex and bounded by the
 * planes that have A on one side and B on the other and touch both, or hold a face of B. A plane for each edge of the
 * one and corner of the other is tried once; afterwards a place is told by a few products.
 */
public final class ShadowBounds {
    /** Planes this close to a corner, relative to the length of their normal, have it on both sides, m. */
    private static final double SLACK = 1e-9;

    /** Normals closer than this are the same plane's. */
    private static final double SAME = 1e-9;

    private final Hull lamp;
    private final Hull solid;
    private final List<Vec> normals = new ArrayList<>();
    private final HalfSpaces region = new HalfSpaces();

    private ShadowBounds(Hull lamp, Hull solid) {
        this.lamp = lamp;
        this.solid = solid;
        solid.faceNormals().forEach(this::tryPlane);
        for (Edge edge : solid.edges()) {
            for (Vec corner : lamp.corners()) {
                tryPlane(edge.way().cross(corner.minus(edge.from())));
            }
        }
        for (Edge edge : lamp.edges()) {
            for (Vec corner : solid.corners()) {
                tryPlane(edge.way().cross(corner.minus(edge.from())));
            }
        }
    }

    public static ShadowBounds between(Hull lamp, Hull solid) {
        return new ShadowBounds(lamp, solid);
    }

    private void tryPlane(Vec normal) {
        double length = normal.length();
        if (length > 0) {
            keep(normal.times(1 / length));
            keep(normal.times(-1 / length));
        }
    }

    /** Keeps a plane that touches the solid, if the lamp lies before it. */
    private void keep(Vec normal) {
        double touching = -solid.least(normal.times(-1));
        if (lamp.least(normal) >= touching - SLACK && isNew(normal)) {
            normals.add(normal);
            region.add(-normal.x(), -normal.y(), -normal.z(), -touching - SLACK);
        }
    }

    private boolean isNew(Vec normal) {
        return normals.stream().noneMatch(known -> known.minus(normal).length() < SAME);
    }

    /** Whether the solid may hide any part of the lamp from a place; where it cannot, this is false nearly always. */
    public boolean mayHide(Vec place) {
        return region.hold(place.x(), place.y(), place.z());
    }
}
