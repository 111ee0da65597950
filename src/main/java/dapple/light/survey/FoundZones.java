package dapple.light.survey;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.zone.BaskingPatch;
import dapple.light.zone.Zone;
import dapple.light.zone.ZoneShares;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an animal finds.
 *
 * @param amounts of the places of the lattice that it reaches, by zone
 * @param brightest the place that has most among them; none where nothing is reachable
 * @param gradientPresent whether a way leads from a place that is bright enough to shade
 * @param onSurface what was asked of resting surfaces; none where none was named
 * @param doubts in the order in which they arose
 */
public record FoundZones(
        ZoneShares amounts,
        Optional<Brightest> brightest,
        boolean gradientPresent,
        Optional<OnSurface> onSurface,
        List<Doubt> doubts) {
    public FoundZones {
        doubts = List.copyOf(doubts);
    }

    /** How many places are reachable. */
    public int reachable() {
        return amounts.reachable();
    }

    /** The share of each zone among the reachable places; empty where there are none. */
    public Map<Zone, Double> shares() {
        return amounts.times(1);
    }

    /**
     * What the shares may be if all amounts are to be multiplied by one and the same factor that is known no closer.
     *
     * @param factors above 0
     */
    public Map<Zone, Interval> shares(Interval factors) {
        return amounts.within(factors);
    }

    /**
     * The nearest that an animal comes to the light.
     *
     * @param amount in the quantity's unit, on the plane that has most
     */
    public record Brightest(Vec place, double amount) {}

    /** Why something may be otherwise. */
    public enum Doubt {
        /** The accuracy asked for was not reached everywhere. */
        LESS_ACCURATE,
        /** No reachable place of the lattice lies beside the patch. */
        PATCH_OUT_OF_REACH
    }

    /**
     * The patch and what depends on it.
     *
     * @param patch the largest on any surface
     * @param overlaps of the patches of each two lamps, each alone; empty unless asked for
     */
    public record OnSurface(Optional<Patch> patch, Optional<List<Overlap>> overlaps) {}

    /**
     * The patch.
     *
     * @param surface the number of its surface, from 0
     * @param body what it is to the body; empty where none was named
     * @param coincidence the share of it in which every quantity is inside its target; empty unless further quantities
     *     were asked for
     */
    public record Patch(BaskingPatch found, int surface, Optional<ForBody> body, Optional<Double> coincidence) {}

    /**
     * A patch to a body.
     *
     * @param fits whether it has room there, evenly lit
     * @param wayOut whether a way leads from the patch to shade in which it has room
     */
    public record ForBody(boolean fits, boolean wayOut) {}

    /**
     * Two lamps that each light a patch.
     *
     * @param share of the smaller patch that lies in both
     * @param overlap whether that is more than was allowed
     */
    public record Overlap(String one, String other, double share, boolean overlap) {}
}
