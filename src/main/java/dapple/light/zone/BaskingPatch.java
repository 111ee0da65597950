package dapple.light.zone;

import dapple.light.geometry.Vec;
import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalDouble;

/** The largest connected part of a resting surface whose light is inside the target for basking. */
public final class BaskingPatch {
    private static final double ROUNDING = 1e-9;

    private final SurfaceLight light;
    private final Sheet sheet;
    private final Body body;
    private final BitSet places;
    private final double area;
    private final int roomiest;
    private final double clearance;
    private final Optional<Evenness> discs;

    private BaskingPatch(SurfaceLight light, Body body, BitSet places) {
        this.light = light;
        this.sheet = light.lattice().sheet();
        this.body = body;
        this.places = places;
        this.area = places.stream().mapToDouble(sheet::area).sum();
        double[] clearances = Clearance.of(sheet, places::get, index -> false);
        this.roomiest = places.stream()
                .reduce((one, other) -> clearances[other] > clearances[one] ? other : one)
                .orElseThrow();
        this.clearance = clearances[roomiest];
        BitSet middles = new BitSet();
        places.stream()
                .filter(index -> clearances[index] >= body.radiusMetres() * (1 - ROUNDING))
                .forEach(middles::set);
        this.discs = Optional.of(middles)
                .filter(found -> !found.isEmpty())
                .map(found -> Evenness.among(sheet, body.radiusMetres(), found, light::amount));
    }

    /** The largest patch on a surface, the first of several; none where nothing is inside the target. */
    public static Optional<BaskingPatch> on(SurfaceLight light, Body body) {
        BitSet basking = new BitSet();
        for (int index = 0; index < light.lattice().size(); index++) {
            basking.set(index, light.isBasking(index));
        }
        BitSet largest = Parts.largest(light.lattice().sheet(), basking);
        return largest.isEmpty() ? Optional.empty() : Optional.of(new BaskingPatch(light, body, largest));
    }

    public double areaSquareMetres() {
        return area;
    }

    /** Diameter of the largest disc that surely lies in the patch, m. */
    public double largestDiscMetres() {
        return 2 * clearance;
    }

    /**
     * How much the light varies in the most even disc that has room for the body: it lies within this share of its middle
     * value. Empty where no disc fits.
     */
    public OptionalDouble variation() {
        return discs.map(found -> OptionalDouble.of(found.variation())).orElse(OptionalDouble.empty());
    }

    /** Whether the body has room, evenly lit. */
    public boolean fits() {
        return discs.isPresent() && discs.get().variation() < body.evenness();
    }

    /** The middle of the most even disc that has room for the body, else of the largest disc. */
    public Vec middle() {
        return light.lattice().onPlane(discs.map(Evenness::middle).orElse(roomiest));
    }

    /** The share of the patch in which every quantity that was measured is inside its target. */
    public double coincidence() {
        return places.stream()
                        .filter(light::isInEveryTarget)
                        .mapToDouble(sheet::area)
                        .sum()
                / area;
    }

    /** The share of the smaller of two patches on one surface that lies in both. */
    public double overlap(BaskingPatch other) {
        if (light.lattice() != other.light.lattice()) {
            return 0;
        }
        BitSet both = (BitSet) places.clone();
        both.and(other.places);
        return both.stream().mapToDouble(sheet::area).sum() / Math.min(area, other.area);
    }

    /** The step of the lattice that it was found on, m. */
    public double stepMetres() {
        return light.lattice().stepMetres();
    }

    public RestingSurface surface() {
        return light.lattice().surface();
    }

    BitSet places() {
        return places;
    }

    SurfaceLattice lattice() {
        return light.lattice();
    }
}
