package dapple.light.zone;

import dapple.light.geometry.Vec;
import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalDouble;

/** The largest connected part of a resting surface whose light is inside the target for basking, and who fits it. */
public final class BaskingPatch {
    private static final double ROUNDING = 1e-9;

    private final Spot spot;
    private final Optional<Body> body;
    private final double clearance;
    private final int middle;
    private final OptionalDouble variation;
    private final double coincidence;

    private BaskingPatch(SurfaceLight light, Spot spot, Optional<Body> body) {
        this.spot = spot;
        this.body = body;
        this.coincidence = spot.share(light::isInEveryTarget);
        double[] clearances = Clearance.of(spot.sheet(), spot.places()::get, index -> false);
        int roomiest = spot.places().stream()
                .reduce((one, other) -> clearances[other] > clearances[one] ? other : one)
                .orElseThrow();
        this.clearance = clearances[roomiest];
        Optional<Evenness> discs = body.flatMap(who -> discs(light, spot, who, clearances));
        this.middle = discs.map(Evenness::middle).orElse(roomiest);
        this.variation =
                discs.map(found -> OptionalDouble.of(found.variation())).orElse(OptionalDouble.empty());
    }

    private static Optional<Evenness> discs(SurfaceLight light, Spot spot, Body body, double[] clearances) {
        BitSet middles = new BitSet();
        spot.places().stream()
                .filter(index -> clearances[index] >= body.radiusMetres() * (1 - ROUNDING))
                .forEach(middles::set);
        return middles.isEmpty()
                ? Optional.empty()
                : Optional.of(Evenness.among(spot.sheet(), body.radiusMetres(), middles, light::amount));
    }

    /**
     * What a spot offers.
     *
     * @param body empty where nobody's size is known
     */
    public static BaskingPatch of(SurfaceLight light, Spot spot, Optional<Body> body) {
        return new BaskingPatch(light, spot, body);
    }

    public double areaSquareMetres() {
        return spot.areaSquareMetres();
    }

    /** Diameter of the largest disc that surely lies in the patch, m. */
    public double largestDiscMetres() {
        return 2 * clearance;
    }

    /**
     * How much the light varies in the most even disc that has room for the body: it lies within this share of its middle
     * value. Empty where no disc has room, or nobody is to lie there.
     */
    public OptionalDouble variation() {
        return variation;
    }

    /** Whether the body has room, evenly lit; nobody does not fit. */
    public boolean fits() {
        return variation.isPresent()
                && body.filter(who -> variation.getAsDouble() < who.evenness()).isPresent();
    }

    /** The middle of the most even disc that has room for the body, else of the largest disc. */
    public Vec middle() {
        return spot.lattice().onPlane(middle);
    }

    /** The share of the patch in which every quantity that was measured is inside its target. */
    public double coincidence() {
        return coincidence;
    }

    /** The larger step of the lattice that it was found on, m. */
    public double stepMetres() {
        return spot.lattice().stepMetres();
    }

    Spot spot() {
        return spot;
    }
}
