package dapple.light.zone;

/**
 * A flat lattice, u fastest.
 *
 * @param countU places along u
 * @param stepU between neighbours along u, m
 */
record Sheet(int countU, int countV, double stepU, double stepV) {
    int size() {
        return countU * countV;
    }

    int u(int index) {
        return index % countU;
    }

    int v(int index) {
        return index / countU;
    }

    /** The area that a place stands for: a whole cell, half of one at an edge, a quarter at a corner. */
    double area(int index) {
        return share(u(index), countU) * share(v(index), countV) * stepU * stepV;
    }

    private static double share(int at, int count) {
        return at == 0 || at == count - 1 ? 0.5 : 1;
    }
}
