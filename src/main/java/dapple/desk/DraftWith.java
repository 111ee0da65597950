package dapple.desk;

import dapple.draft.DraftCover;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.light.geometry.Vec;
import dapple.rig.Hanging;
import dapple.rig.Mount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A draft rig with one part otherwise. */
final class DraftWith {
    private DraftWith() {}

    /** A lamp that has a place, higher or lower. */
    static DraftRig height(DraftRig rig, int lamp, double metres) {
        DraftLamp old = rig.lamps().get(lamp);
        Hanging hanging = old.hanging();
        Mount mount = hanging.mount().orElseThrow();
        Vec centre = new Vec(mount.centre().x(), mount.centre().y(), metres);
        return lamp(
                rig,
                lamp,
                new DraftLamp(
                        old.fittingId(),
                        old.lamp(),
                        hung(hanging, new Mount(centre, mount.aim(), mount.along()))
                                .with(hanging.gear())));
    }

    /** Another lamp in the place of one. */
    static DraftRig swap(DraftRig rig, int lamp, LampPick pick, Mount mount) {
        Hanging hanging = rig.lamps().get(lamp).hanging();
        return lamp(rig, lamp, new DraftLamp(Optional.empty(), pick, hung(hanging, mount)));
    }

    private static Hanging hung(Hanging hanging, Mount mount) {
        return new Hanging(hanging.place(), Optional.of(mount), hanging.timer(), hanging.circuitId());
    }

    private static DraftRig lamp(DraftRig rig, int number, DraftLamp changed) {
        List<DraftLamp> lamps = new ArrayList<>(rig.lamps());
        lamps.set(number, changed);
        return new DraftRig(lamps, rig.covers(), rig.furniture());
    }

    /** A cover in another number of layers; 0 takes it away. */
    static DraftRig layers(DraftRig rig, int number, int layers) {
        List<DraftCover> covers = new ArrayList<>(rig.covers());
        DraftCover old = covers.remove(number);
        if (layers > 0) {
            covers.add(number, new DraftCover(old.coverId(), old.cover().withLayers(layers)));
        }
        return new DraftRig(rig.lamps(), covers, rig.furniture());
    }
}
