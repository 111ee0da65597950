package dapple.light.geometry;

import java.util.ArrayList;
import java.util.List;

/** A convex body by its corners and the edges that join them. */
public final class Hull {
    private final List<Vec> corners;
    private final List<Edge> edges;
    private final List<Vec> faceNormals;
    private final double thickness;

    private Hull(List<Vec> corners, List<Edge> edges, List<Vec> faceNormals, double thickness) {
        this.corners = List.copyOf(corners);
        this.edges = List.copyOf(edges);
        this.faceNormals = List.copyOf(faceNormals);
        this.thickness = thickness;
    }

    /** An edge between two corners. */
    record Edge(Vec from, Vec to) {
        Vec way() {
            return to.minus(from);
        }
    }

    public static Hull point(Vec place) {
        return new Hull(List.of(place), List.of(), List.of(), 0);
    }

    public static Hull segment(Vec from, Vec to) {
        return new Hull(List.of(from, to), List.of(new Edge(from, to)), List.of(), 0);
    }

    /** A parallelogram with two half sides from its middle. */
    public static Hull plate(Vec middle, Vec one, Vec other) {
        List<Vec> round = List.of(
                middle.plus(one).plus(other),
                middle.plus(one).minus(other),
                middle.minus(one).minus(other),
                middle.minus(one).plus(other));
        return new Hull(round, ring(round), List.of(one.cross(other)), 0);
    }

    /** A block with three half sides from its middle. */
    public static Hull block(Vec middle, Vec one, Vec other, Vec third) {
        Hull top = plate(middle.plus(third), one, other);
        Hull bottom = plate(middle.minus(third), one, other);
        List<Vec> corners = new ArrayList<>(top.corners);
        corners.addAll(bottom.corners);
        List<Edge> edges = new ArrayList<>(top.edges);
        edges.addAll(bottom.edges);
        for (int corner = 0; corner < top.corners.size(); corner++) {
            edges.add(new Edge(top.corners.get(corner), bottom.corners.get(corner)));
        }
        double thickness = 2 * Math.min(one.length(), Math.min(other.length(), third.length()));
        return new Hull(corners, edges, List.of(one.cross(other), other.cross(third), third.cross(one)), thickness);
    }

    private static List<Edge> ring(List<Vec> corners) {
        List<Edge> edges = new ArrayList<>();
        for (int corner = 0; corner < corners.size(); corner++) {
            edges.add(new Edge(corners.get(corner), corners.get((corner + 1) % corners.size())));
        }
        return edges;
    }

    public List<Vec> corners() {
        return corners;
    }

    List<Edge> edges() {
        return edges;
    }

    /** Normals of the faces, each standing for a face and the one opposite. */
    List<Vec> faceNormals() {
        return faceNormals;
    }

    /** Distance of the nearest corner from a place, m. */
    public double distance(Vec place) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int corner = 0; corner < corners.size(); corner++) {
            Vec way = corners.get(corner).minus(place);
            nearest = Math.min(nearest, way.dot(way));
        }
        return Math.sqrt(nearest);
    }

    /** The shortest side of a block, m; 0 of what is flat. */
    public double thickness() {
        return thickness;
    }

    /** The least component of a corner along a direction. */
    public double least(Vec direction) {
        double least = Double.POSITIVE_INFINITY;
        for (int corner = 0; corner < corners.size(); corner++) {
            least = Math.min(least, corners.get(corner).dot(direction));
        }
        return least;
    }
}
