package dapple.light.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Chooses up to three rigs that differ in kind from those that meet every demand. */
final class Choosing {
    private final List<Verified> met;
    private final List<Proposal> chosen = new ArrayList<>();
    private final List<Verified> taken = new ArrayList<>();

    private Choosing(List<Verified> met) {
        this.met = met.stream().sorted(Comparator.comparing(Verified::mix)).toList();
    }

    /** @param met not empty */
    static List<Proposal> of(List<Verified> met) {
        Choosing choosing = new Choosing(met);
        choosing.choose(Merit.FEWEST_CHANGES);
        choosing.choose(Merit.LEAST_POWER);
        choosing.choose(choosing.isGradientAsked() ? Merit.BEST_GRADIENT : Merit.WELL_INSIDE);
        return choosing.chosen;
    }

    private boolean isGradientAsked() {
        return met.stream().anyMatch(rig -> rig.rig().unevenness().isPresent());
    }

    /** The best by a merit; if that is shown already, the best that hangs other lamps or lays other covers, else the next. */
    private void choose(Merit merit) {
        Optional<Verified> best = best(merit, List.of());
        if (best.isEmpty()) {
            return;
        }
        Verified first = best.get();
        if (!taken.contains(first)) {
            add(merit, first);
            return;
        }
        List<Verified> alike = met.stream()
                .filter(rig -> taken.stream().anyMatch(before -> isAlike(rig, before)))
                .toList();
        best(merit, alike).or(() -> best(merit, taken)).ifPresent(rig -> add(merit, rig));
    }

    private Optional<Verified> best(Merit merit, List<Verified> without) {
        return met.stream()
                .filter(rig -> !without.contains(rig) && Double.isFinite(merit.key(rig.score())))
                .min(Comparator.comparingDouble(rig -> merit.key(rig.score())));
    }

    private void add(Merit merit, Verified rig) {
        Set<Merit> bestIn = EnumSet.noneOf(Merit.class);
        Arrays.stream(Merit.values())
                .filter(each -> best(each, List.of()).filter(rig::equals).isPresent())
                .forEach(bestIn::add);
        taken.add(rig);
        chosen.add(new Proposal(merit, bestIn.contains(merit), bestIn, rig.rig()));
    }

    private static boolean isAlike(Verified one, Verified other) {
        return options(one).equals(options(other))
                && one.rig().covers().equals(other.rig().covers());
    }

    private static List<String> options(Verified rig) {
        return rig.rig().lamps().stream().map(PlannedLamp::optionId).sorted().toList();
    }
}
