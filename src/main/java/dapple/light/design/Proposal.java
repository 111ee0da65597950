package dapple.light.design;

import java.util.Set;

/**
 * A rig that meets every demand.
 *
 * @param merit what it is shown for
 * @param isBest whether it is the best in that of all that were found; else the best is shown for another merit already
 * @param bestIn every merit in which none that was found is better
 */
public record Proposal(Merit merit, boolean isBest, Set<Merit> bestIn, PlannedRig rig) {
    public Proposal {
        bestIn = Set.copyOf(bestIn);
    }
}
