package dapple.draft;

import dapple.rig.LampStep;
import dapple.rig.Rig;
import dapple.rig.RigStep;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What must be done so that a draft hangs: in words for hands, and as steps for the record; what goes comes first. */
public record RigDifference(List<Deed> deeds, List<RigStep> steps) {
    public RigDifference {
        deeds = List.copyOf(deeds);
        steps = List.copyOf(steps);
    }

    /** Something to be done by hand with its steps on record; none where it cannot be done yet. */
    record Change(List<Deed> deeds, List<RigStep> steps) {
        static Change of(Deed deed, RigStep step) {
            return new Change(List.of(deed), List.of(step));
        }
    }

    public static RigDifference between(Rig installed, DraftRig draft, Stock stock) {
        List<Change> changes = Stream.of(
                        LampDifference.between(installed, draft, stock),
                        CoverDifference.between(installed, draft),
                        FurnitureDifference.between(installed, draft))
                .flatMap(List::stream)
                .toList();
        return new RigDifference(
                changes.stream().flatMap(change -> change.deeds().stream()).toList(),
                changes.stream()
                        .flatMap(change -> change.steps().stream())
                        .sorted(Comparator.comparing(RigDifference::comes))
                        .toList());
    }

    /** Whether a step brings something: a lamp that is hung again otherwise must have been taken out first. */
    private static boolean comes(RigStep step) {
        return step instanceof LampStep.Fit;
    }

    public boolean isEmpty() {
        return deeds.isEmpty();
    }

    /** Lamps that must be bought, and put in the place of their model, before the draft can hang. */
    public List<Deed.Buy> missing() {
        return deeds.stream()
                .filter(Deed.Buy.class::isInstance)
                .map(Deed.Buy.class::cast)
                .toList();
    }
}
