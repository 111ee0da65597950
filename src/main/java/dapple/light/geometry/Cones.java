package dapple.light.geometry;

import java.util.List;

/**
 * Whether two sets of corners, seen from one place, can cover one another. Seen from there each is a convex polygon;
 * if they lie apart, the plane through the place and an edge of one of them parts them.
 */
final class Cones {
    private Cones() {}

    /**
     * Whether a plane through the place and an edge of the first set has the two on different sides.
     *
     * @param edges pairs of indices into the first set
     */
    static boolean areParted(Vec from, Vec[] corners, int[][] edges, List<Vec> others) {
        for (int[] edge : edges) {
            Vec one = corners[edge[0]];
            Vec other = corners[edge[1]];
            double ax = one.x() - from.x();
            double ay = one.y() - from.y();
            double az = one.z() - from.z();
            double bx = other.x() - from.x();
            double by = other.y() - from.y();
            double bz = other.z() - from.z();
            double nx = ay * bz - az * by;
            double ny = az * bx - ax * bz;
            double nz = ax * by - ay * bx;
            double offset = nx * from.x() + ny * from.y() + nz * from.z();
            if (parts(nx, ny, nz, offset, corners, others)) {
                return true;
            }
        }
        return false;
    }

    private static boolean parts(double nx, double ny, double nz, double offset, Vec[] corners, List<Vec> others) {
        double slack = 1e-12 * (Math.abs(nx) + Math.abs(ny) + Math.abs(nz));
        double least = 0;
        double most = 0;
        for (Vec corner : corners) {
            double side = nx * corner.x() + ny * corner.y() + nz * corner.z() - offset;
            least = Math.min(least, side);
            most = Math.max(most, side);
        }
        if (least < -slack && most > slack) {
            return false;
        }
        double sign = most > slack ? 1 : -1;
        for (int index = 0; index < others.size(); index++) {
            Vec corner = others.get(index);
            if (sign * (nx * corner.x() + ny * corner.y() + nz * corner.z() - offset) > 0) {
                return false;
            }
        }
        return most > slack || least < -slack;
    }
}
