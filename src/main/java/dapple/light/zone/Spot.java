package dapple.light.zone;

import java.util.BitSet;
import java.util.Optional;
import java.util.function.IntPredicate;

/** A connected part of a resting surface whose light is inside the target for basking. */
public final class Spot {
    private final SurfaceLattice lattice;
    private final BitSet places;
    private final double area;

    private Spot(SurfaceLattice lattice, BitSet places) {
        this.lattice = lattice;
        this.places = places;
        this.area = area(places);
    }

    /** The largest spot on a surface, the first of several; none where nothing is inside the target. */
    public static Optional<Spot> largestOn(SurfaceLight light) {
        BitSet basking = new BitSet();
        for (int index = 0; index < light.lattice().size(); index++) {
            basking.set(index, light.isBasking(index));
        }
        BitSet largest = Parts.largest(light.lattice().sheet(), basking);
        return largest.isEmpty() ? Optional.empty() : Optional.of(new Spot(light.lattice(), largest));
    }

    private double area(BitSet some) {
        return some.stream().mapToDouble(lattice.sheet()::area).sum();
    }

    public double areaSquareMetres() {
        return area;
    }

    /** The share of the smaller of two spots on one lattice that lies in both; 0 on different ones. */
    public double overlap(Spot other) {
        if (lattice != other.lattice) {
            return 0;
        }
        BitSet both = (BitSet) places.clone();
        both.and(other.places);
        return area(both) / Math.min(area, other.area);
    }

    /** The share of its area at which something holds. */
    double share(IntPredicate holds) {
        return places.stream().filter(holds).mapToDouble(lattice.sheet()::area).sum() / area;
    }

    BitSet places() {
        return places;
    }

    SurfaceLattice lattice() {
        return lattice;
    }

    Sheet sheet() {
        return lattice.sheet();
    }
}
