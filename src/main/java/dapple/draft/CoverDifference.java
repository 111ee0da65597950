package dapple.draft;

import dapple.draft.RigDifference.Change;
import dapple.rig.Cover;
import dapple.rig.CoverFacts;
import dapple.rig.CoverStep;
import dapple.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What must be done to the cover. */
final class CoverDifference {
    private CoverDifference() {}

    static List<Change> between(Rig installed, DraftRig draft) {
        List<Change> changes = new ArrayList<>();
        installed.covers().stream()
                .filter(facts -> draft.covers().stream()
                        .noneMatch(drafted -> drafted.coverId().equals(Optional.of(facts.id()))))
                .map(facts -> Change.of(new Deed.TakeOff(facts.cover()), new CoverStep.TakeOff(facts.id())))
                .forEach(changes::add);
        draft.covers().forEach(drafted -> changes.addAll(cover(installed, drafted)));
        return changes;
    }

    private static List<Change> cover(Rig installed, DraftCover drafted) {
        Cover after = drafted.cover();
        return installed.covers().stream()
                .filter(facts -> drafted.coverId().equals(Optional.of(facts.id())))
                .findFirst()
                .map(before -> changed(before, after))
                .orElseGet(() -> List.of(Change.of(new Deed.Put(after), new CoverStep.Put(after))));
    }

    private static List<Change> changed(CoverFacts before, Cover after) {
        Cover cover = before.cover();
        if (cover.equals(after)) {
            return List.of();
        }
        return cover.withLayers(after.layers()).equals(after)
                ? List.of(Change.of(
                        new Deed.Layer(cover, after.layers()), new CoverStep.SetLayers(before.id(), after.layers())))
                : List.of(Change.of(new Deed.Exchange(cover, after), new CoverStep.Replace(before.id(), after)));
    }
}
