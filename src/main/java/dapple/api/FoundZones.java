package dapple.api;

import dapple.light.zone.BaskingPatch;
import dapple.light.zone.Zone;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What zones a document is answered with.
 *
 * @param places how many places of the grid the animal reaches
 * @param shares of each zone among them; none where there are no such places
 * @param onSurface what was asked of resting surfaces
 */
record FoundZones(
        int places,
        Map<Zone, Double> shares,
        boolean gradientPresent,
        Optional<OnSurface> onSurface,
        List<String> warnings) {

    /**
     * The patch and what depends on it.
     *
     * @param patch the largest on any surface
     * @param overlaps of the patches of each two lamps, each alone; empty unless asked for
     */
    record OnSurface(Optional<Patch> patch, Optional<List<Overlap>> overlaps) {}

    /**
     * The patch.
     *
     * @param surface the number of its surface, from 0
     * @param wayOut whether a way leads from it to shade
     * @param coincidence empty unless further quantities were asked for
     */
    record Patch(BaskingPatch found, int surface, boolean wayOut, Optional<Double> coincidence) {}

    /**
     * Two lamps that each light a patch.
     *
     * @param share of the smaller patch that lies in both
     * @param overlap whether that is more than was allowed
     */
    record Overlap(String one, String other, double share, boolean overlap) {}
}
