package dapple.desk;

import dapple.check.Checks;
import dapple.draft.DraftRig;
import dapple.light.design.Binding;
import dapple.light.design.Fulfilment;
import dapple.light.design.Merit;
import dapple.site.Caution;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a search for rigs came to. */
public sealed interface Proposed {
    /** It could not be looked for: a message says why. */
    record Not(String key) implements Proposed {}

    /**
     * Rigs that meet all that is needed, one to three.
     *
     * @param isExhaustive whether every rig that the places and lamps allow was looked at
     * @param weighed what each rig was held against
     * @param unweighed what is needed too, and of which no lamp is known to give anything
     * @param unknown lamps that hang and stay, since their light is not known
     */
    record Found(
            List<Shown> rigs, boolean isExhaustive, List<String> weighed, List<String> unweighed, List<String> unknown)
            implements Proposed {
        public Found {
            rigs = List.copyOf(rigs);
        }
    }

    /**
     * None was found.
     *
     * @param nearest the rig that misses least
     * @param bindings what alone stands in the way, the least missed first; none: several things together
     */
    record None(
            Shown nearest,
            List<Binding> bindings,
            boolean isExhaustive,
            List<String> weighed,
            List<String> unweighed,
            List<String> unknown)
            implements Proposed {
        public None {
            bindings = List.copyOf(bindings);
        }
    }

    /**
     * What a rig is shown for.
     *
     * @param timers which lamps that come have a timer by proposal, and whose
     * @param cautions of the lamps that come and of those that stay
     */
    record Shown(
            Optional<Merit> merit,
            boolean isBest,
            Set<Merit> bestIn,
            DraftRig rig,
            int changes,
            Optional<Double> unevenness,
            List<Fulfilment> unmet,
            Power power,
            Checks checks,
            Effect effect,
            List<String> deeds,
            List<String> timers,
            Set<Caution> cautions) {
        public Shown {
            bestIn = Set.copyOf(bestIn);
            unmet = List.copyOf(unmet);
            deeds = List.copyOf(deeds);
            timers = List.copyOf(timers);
            cautions = Set.copyOf(cautions);
        }
    }
}
