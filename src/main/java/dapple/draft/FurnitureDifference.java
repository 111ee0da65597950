package dapple.draft;

import dapple.draft.RigDifference.Change;
import dapple.rig.Furniture;
import dapple.rig.FurnitureFacts;
import dapple.rig.FurnitureStep;
import dapple.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What must be done to the furniture. */
final class FurnitureDifference {
    private FurnitureDifference() {}

    static List<Change> between(Rig installed, DraftRig draft) {
        List<Change> changes = new ArrayList<>();
        installed.furniture().stream()
                .filter(facts -> draft.furniture().stream()
                        .noneMatch(drafted -> drafted.furnitureId().equals(Optional.of(facts.id()))))
                .map(facts -> Change.of(new Deed.Clear(facts.furniture()), new FurnitureStep.Remove(facts.id())))
                .forEach(changes::add);
        draft.furniture().forEach(drafted -> changes.addAll(item(installed, drafted)));
        return changes;
    }

    private static List<Change> item(Rig installed, DraftFurniture drafted) {
        Furniture after = drafted.furniture();
        return installed.furniture().stream()
                .filter(facts -> drafted.furnitureId().equals(Optional.of(facts.id())))
                .findFirst()
                .map(before -> changed(before, after))
                .orElseGet(() -> List.of(Change.of(new Deed.Place(after), new FurnitureStep.Put(after))));
    }

    private static List<Change> changed(FurnitureFacts before, Furniture after) {
        return before.furniture().equals(after)
                ? List.of()
                : List.of(Change.of(
                        new Deed.Shift(before.furniture(), after), new FurnitureStep.Move(before.id(), after)));
    }
}
