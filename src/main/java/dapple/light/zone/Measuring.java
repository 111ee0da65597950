package dapple.light.zone;

/** Finds the light on a surface. */
@FunctionalInterface
public interface Measuring {
    /**
     * The largest irradiance on any plane at some places.
     *
     * @param places indices of the lattice
     * @return by quantity in the order of the targets, then in the order of the places; NaN where a place is not open
     */
    double[][] at(SurfaceLattice lattice, int[] places);
}
