package dapple.light.zone;

import dapple.light.geometry.Vec;
import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntConsumer;

/** The largest connected part of a resting surface whose light is inside the target for basking. */
public final class BaskingPatch {
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
                .filter(index -> clearances[index] >= body.radiusMetres())
                .forEach(middles::set);
        this.discs = Optional.of(middles)
                .filter(found -> !found.isEmpty())
                .map(found -> Evenness.among(sheet, body.radiusMetres(), found, light::amount));
    }

    /** The largest patch on a surface, the first of several; none where nothing is inside the target. */
    public static Optional<BaskingPatch> on(SurfaceLight light, Body body) {
        BitSet left = new BitSet();
        for (int index = 0; index < light.lattice().size(); index++) {
            left.set(index, light.isBasking(index));
        }
        Sheet sheet = light.lattice().sheet();
        BitSet largest = new BitSet();
        double most = 0;
        for (int start = left.nextSetBit(0); start >= 0; start = left.nextSetBit(start)) {
            BitSet part = connected(sheet, left, start);
            double area = part.stream().mapToDouble(sheet::area).sum();
            if (area > most) {
                most = area;
                largest = part;
            }
        }
        return most > 0 ? Optional.of(new BaskingPatch(light, body, largest)) : Optional.empty();
    }

    /** Takes out of what is left all that is connected with a place, by neighbours along u and v. */
    private static BitSet connected(Sheet sheet, BitSet left, int start) {
        BitSet part = new BitSet();
        int[] queue = new int[left.cardinality()];
        int[] end = {0};
        IntConsumer take = index -> {
            if (left.get(index)) {
                left.clear(index);
                part.set(index);
                queue[end[0]++] = index;
            }
        };
        take.accept(start);
        for (int next = 0; next < end[0]; next++) {
            int at = queue[next];
            if (sheet.u(at) > 0) {
                take.accept(at - 1);
            }
            if (sheet.u(at) < sheet.countU() - 1) {
                take.accept(at + 1);
            }
            if (sheet.v(at) > 0) {
                take.accept(at - sheet.countU());
            }
            if (sheet.v(at) < sheet.countV() - 1) {
                take.accept(at + sheet.countU());
            }
        }
        return part;
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
        return light.lattice().place(discs.map(Evenness::middle).orElse(roomiest));
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
