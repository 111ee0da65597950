package dapple.light.geometry;

/**
 * What a box hides from a place: all that lies behind the faces that the place sees, and within the planes through the
 * place and the edges between a face that it sees and one that it does not.
 */
final class BoxShade implements Shade {
    private static final int[] NEXT = {1, 2, 0};

    private final Vec centre;
    private final Vec[] halves;
    private final Vec[] normals = new Vec[3];
    private final double[] reaches = new double[3];
    private final int[] seen = new int[3];
    private final HalfSpaces hidden = new HalfSpaces();
    private Vec place = Vec.UP;

    /** A box by its middle and three half sides, at right angles. */
    BoxShade(Vec centre, Vec one, Vec other, Vec third) {
        this.centre = centre;
        this.halves = new Vec[] {one, other, third};
        for (int axis = 0; axis < halves.length; axis++) {
            reaches[axis] = halves[axis].length();
            normals[axis] = halves[axis].times(1 / reaches[axis]);
        }
    }

    @Override
    public void lookFrom(Vec from) {
        place = from;
        hidden.clear();
        for (int axis = 0; axis < halves.length; axis++) {
            double height = normals[axis].dot(from) - normals[axis].dot(centre);
            seen[axis] = height > reaches[axis] ? 1 : height < -reaches[axis] ? -1 : 0;
            if (seen[axis] != 0) {
                behind(axis, -seen[axis]);
            }
        }
        for (int axis = 0; axis < halves.length; axis++) {
            edgesAlong(axis);
        }
    }

    /** All that lies behind a face that is seen. */
    private void behind(int axis, int sign) {
        Vec normal = normals[axis];
        hidden.add(sign * normal.x(), sign * normal.y(), sign * normal.z(), sign * normal.dot(centre) - reaches[axis]);
    }

    /** The four edges along an axis: each belongs to the outline if one of its two faces is seen. */
    private void edgesAlong(int axis) {
        int one = NEXT[axis];
        int other = NEXT[one];
        for (int side = -1; side <= 1; side += 2) {
            for (int otherSide = -1; otherSide <= 1; otherSide += 2) {
                if ((seen[one] == side) != (seen[other] == otherSide)) {
                    within(halves[axis], halves[one], side, halves[other], otherSide);
                }
            }
        }
    }

    private void within(Vec edge, Vec one, int side, Vec other, int otherSide) {
        double toCentreX = centre.x() - place.x();
        double toCentreY = centre.y() - place.y();
        double toCentreZ = centre.z() - place.z();
        double x = toCentreX + side * one.x() + otherSide * other.x();
        double y = toCentreY + side * one.y() + otherSide * other.y();
        double z = toCentreZ + side * one.z() + otherSide * other.z();
        double normalX = edge.y() * z - edge.z() * y;
        double normalY = edge.z() * x - edge.x() * z;
        double normalZ = edge.x() * y - edge.y() * x;
        double sign = normalX * toCentreX + normalY * toCentreY + normalZ * toCentreZ > 0 ? 1 : -1;
        hidden.add(
                sign * normalX,
                sign * normalY,
                sign * normalZ,
                sign * (normalX * place.x() + normalY * place.y() + normalZ * place.z()));
    }

    @Override
    public boolean shadow(Vec a, Vec b, Shadow shadow) {
        return hidden.part(a, b, shadow);
    }

    @Override
    public boolean hides(Vec point) {
        return hidden.hold(point.x(), point.y(), point.z());
    }

    @Override
    public boolean sparesAll(Hull hull) {
        return hidden.exclude(hull);
    }
}
