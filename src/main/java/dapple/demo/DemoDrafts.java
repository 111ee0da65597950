package dapple.demo;

import dapple.draft.DraftCover;
import dapple.draft.DraftLamp;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.Drafts;
import dapple.light.geometry.Vec;
import dapple.rig.Hanging;
import dapple.rig.Mount;
import dapple.rig.Rigs;
import java.time.Instant;
import java.util.List;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** What could be done about an enclosure that has become too weak under a second mesh. */
@Component
@Profile("demo")
class DemoDrafts {
    private static final String SECOND_MESH = "fine mesh";

    /** How much lower the lamps could hang, m. */
    private static final double LOWER_METRES = 0.05;

    private final Drafts drafts;
    private final Rigs rigs;

    DemoDrafts(Drafts drafts, Rigs rigs) {
        this.drafts = drafts;
        this.rigs = rigs;
    }

    void think(DemoTeam.Members members, long enclosure, Instant now) {
        DraftRig installed = DraftRig.of(rigs.at(members.siteId(), enclosure, now));
        DraftPlace place = new DraftPlace(members.siteId(), enclosure);
        List<DraftCover> coarse = installed.covers().stream()
                .filter(drafted -> !drafted.cover().name().equals(SECOND_MESH))
                .toList();
        List<DraftLamp> lower =
                installed.lamps().stream().map(DemoDrafts::lowered).toList();
        drafts.make(
                place,
                "Lamps 5 cm lower",
                new DraftRig(lower, installed.covers(), installed.furniture()),
                members.supervisor());
        drafts.make(
                place,
                "Without the fine mesh",
                new DraftRig(installed.lamps(), coarse, installed.furniture()),
                members.supervisor());
    }

    private static DraftLamp lowered(DraftLamp lamp) {
        Hanging hanging = lamp.hanging();
        return new DraftLamp(
                lamp.fittingId(),
                lamp.lamp(),
                new Hanging(
                        hanging.place(),
                        hanging.mount().map(DemoDrafts::lowered),
                        hanging.timer(),
                        hanging.circuitId()));
    }

    private static Mount lowered(Mount mount) {
        return new Mount(mount.centre().minus(new Vec(0, 0, LOWER_METRES)), mount.aim(), mount.along());
    }
}
