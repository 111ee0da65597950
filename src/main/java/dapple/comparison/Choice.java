package dapple.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Proposes points to compare meters at: from each step from the weakest to the strongest light one, first where few points
 * of the same enclosure and of the same room have been chosen. The same collection gives the same proposal.
 */
final class Choice {
    /** How many points are proposed (common practice, no source). */
    static final int POINTS = 10;

    /** In dimmer light than so many steps of the display the steps count more than the meters (ours). */
    static final int LEAST_STEPS = 5;

    private final Map<Long, Integer> perEnclosure = new HashMap<>();
    private final Map<Long, Integer> perRoom = new HashMap<>();
    private final List<Candidate> chosen = new ArrayList<>();

    private Choice() {}

    /**
     * Points at which nothing was read of late, or hardly any light, only where there are too few others.
     *
     * @param resolution coarsest step of the meters' displays, in the unit of the quantity
     */
    static List<Candidate> of(List<Candidate> candidates, double resolution) {
        Choice choice = new Choice();
        List<Candidate> lit = candidates.stream()
                .filter(candidate -> isLit(candidate, LEAST_STEPS * resolution))
                .sorted(Comparator.comparing((Candidate one) -> one.amount().orElseThrow())
                        .thenComparing(one -> one.point().id()))
                .toList();
        int steps = Math.min(POINTS, lit.size());
        for (int step = 0; step < steps; step++) {
            choice.takeOne(lit.subList(step * lit.size() / steps, (step + 1) * lit.size() / steps));
        }
        List<Candidate> dark = new ArrayList<>(candidates);
        dark.removeAll(lit);
        while (choice.chosen.size() < POINTS && !dark.isEmpty()) {
            dark.remove(choice.takeOne(dark));
        }
        return candidates.stream().filter(choice.chosen::contains).toList();
    }

    private static boolean isLit(Candidate candidate, double least) {
        return candidate.amount().filter(amount -> amount >= least).isPresent();
    }

    private Candidate takeOne(List<Candidate> alike) {
        Candidate taken = alike.stream()
                .min(Comparator.comparing((Candidate one) -> perEnclosure.getOrDefault(one.enclosureId(), 0))
                        .thenComparing(one -> perRoom.getOrDefault(one.roomId(), 0))
                        .thenComparing(one -> one.point().id()))
                .orElseThrow();
        perEnclosure.merge(taken.enclosureId(), 1, Integer::sum);
        perRoom.merge(taken.roomId(), 1, Integer::sum);
        chosen.add(taken);
        return taken;
    }
}
