package dapple.light.design;

import java.util.List;

/** What a search for rigs comes to. */
public sealed interface ProposalAnswer {
    /** Whether every rig that the options and places allow was looked at, so that none is better or none there is. */
    boolean isExhaustive();

    /**
     * Rigs that meet every demand.
     *
     * @param proposals one to three, each a rig of its own
     */
    record Found(List<Proposal> proposals, boolean isExhaustive) implements ProposalAnswer {
        public Found {
            proposals = List.copyOf(proposals);
        }
    }

    /**
     * None was found.
     *
     * @param nearest the rig that misses least, by the product of the factors
     * @param bindings demands each of which alone stands in the way, the least missed first; if there are none, two or more
     *     stand in the way together: those that the nearest rig does not meet
     */
    record NoneFound(PlannedRig nearest, List<Binding> bindings, boolean isExhaustive) implements ProposalAnswer {
        public NoneFound {
            bindings = List.copyOf(bindings);
        }
    }
}
