package dapple.desk;

import dapple.draft.DraftCover;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.light.design.Deed;
import dapple.light.design.PlannedCover;
import dapple.light.design.PlannedLamp;
import dapple.light.design.PlannedRig;
import dapple.rig.Gear;
import dapple.rig.Hanging;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a rig that was planned a draft, with the furniture of the draft that it was looked for in. */
final class PlannedDraft {
    private final Search search;
    private final DraftRig draft;
    private final String newPlace;

    PlannedDraft(Search search, DraftRig draft, String newPlace) {
        this.search = search;
        this.draft = draft;
        this.newPlace = newPlace;
    }

    DraftRig of(PlannedRig planned) {
        List<DraftLamp> lamps = new ArrayList<>(search.untouched());
        planned.lamps().stream().map(this::lamp).forEach(lamps::add);
        List<DraftCover> covers = new ArrayList<>(draft.covers());
        for (PlannedCover cover : planned.covers()) {
            int number = Integer.parseInt(cover.coverId());
            DraftCover old = covers.get(number);
            covers.set(number, new DraftCover(old.coverId(), old.cover().withLayers(cover.layers())));
        }
        return new DraftRig(lamps, covers, draft.furniture());
    }

    private DraftLamp lamp(PlannedLamp planned) {
        Optional<DraftLamp> hung = search.hung(planned.optionId());
        if (planned.deed() == Deed.KEPT) {
            return hung.orElseThrow();
        }
        Optional<Hanging> before = hung.map(DraftLamp::hanging);
        Hanging hanging = new Hanging(
                newPlace,
                Optional.of(LampMount.of(planned.lamp())),
                before.flatMap(Hanging::timer),
                before.flatMap(Hanging::circuitId),
                before.map(Hanging::gear).orElse(Gear.UNKNOWN));
        return new DraftLamp(hung.flatMap(DraftLamp::fittingId), search.pick(planned.optionId()), hanging);
    }
}
