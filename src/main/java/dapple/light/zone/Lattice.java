package dapple.light.zone;

import dapple.light.geometry.Vec;

/**
 * A lattice of places, x fastest, then y, then z.
 *
 * @param from its first place
 * @param stepMetres between neighbours along each axis, above 0, m
 */
public record Lattice(Vec from, double stepMetres, int countX, int countY, int countZ) {
    public Lattice {
        boolean counted = countX > 0 && countY > 0 && countZ > 0;
        if (!(stepMetres > 0 && stepMetres < Double.POSITIVE_INFINITY) || !from.isFinite() || !counted) {
            throw new IllegalArgumentException("a lattice must have a step and places, was " + stepMetres + " m, "
                    + countX + " by " + countY + " by " + countZ);
        }
    }

    public int size() {
        return countX * countY * countZ;
    }

    /** How many rows of places lie along x. */
    public int rows() {
        return countY * countZ;
    }

    public Vec place(int index) {
        return place(x(index), y(index), z(index));
    }

    Vec place(int x, int y, int z) {
        return new Vec(from.x() + x * stepMetres, from.y() + y * stepMetres, from.z() + z * stepMetres);
    }

    int index(int x, int y, int z) {
        return x + countX * (y + countY * z);
    }

    boolean has(int x, int y, int z) {
        return x >= 0 && x < countX && y >= 0 && y < countY && z >= 0 && z < countZ;
    }

    int x(int index) {
        return index % countX;
    }

    int y(int index) {
        return index / countX % countY;
    }

    int z(int index) {
        return index / countX / countY;
    }
}
