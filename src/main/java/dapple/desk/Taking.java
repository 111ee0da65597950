package dapple.desk;

import dapple.draft.DraftFacts;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.rig.Hanging;
import dapple.rig.Mount;
import dapple.site.Given;
import java.util.Optional;

/** Puts an answer into the draft that was asked. */
final class Taking {
    private final Desk desk;
    private final DraftRig rig;
    private final TakeForm form;

    private Taking(Desk desk, DraftRig rig, TakeForm form) {
        this.desk = desk;
        this.rig = rig;
        this.form = form;
    }

    /** The draft with the answer in it; empty where it has no such part. */
    static Optional<DraftRig> of(Desk desk, DraftFacts draft, TakeForm form) {
        return new Taking(desk, draft.rig(), form).taken();
    }

    private Optional<DraftRig> taken() {
        int part = Given.of(form.part());
        Integer layers = form.layers();
        if (layers != null) {
            return part < rig.covers().size() ? Optional.of(DraftWith.layers(rig, part, layers)) : Optional.empty();
        }
        Optional<Mount> mount = part < rig.lamps().size()
                ? Optional.of(rig.lamps().get(part)).map(DraftLamp::hanging).flatMap(Hanging::mount)
                : Optional.empty();
        return mount.flatMap(before ->
                form.height().map(metres -> DraftWith.height(rig, part, metres)).or(() -> swapped(part, before)));
    }

    private Optional<DraftRig> swapped(int part, Mount before) {
        Turned turned = form.turned() == null ? Turned.AS_BEFORE : form.turned();
        return Optional.ofNullable(form.pick())
                .flatMap(PickText::read)
                .filter(desk.stock()::has)
                .filter(this::isFree)
                .flatMap(pick -> turned.of(before).map(mount -> DraftWith.swap(rig, part, pick, mount)));
    }

    private boolean isFree(LampPick pick) {
        return pick instanceof LampPick.Model
                || rig.lamps().stream().noneMatch(lamp -> lamp.lamp().equals(pick));
    }
}
