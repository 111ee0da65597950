package dapple.demo;

import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.light.geometry.Vec;
import dapple.rig.Cover;
import dapple.rig.CoverMaterial;
import dapple.rig.DailyTimer;
import dapple.rig.FirstRig;
import dapple.rig.Furniture;
import dapple.rig.FurnitureShape;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.Mount;
import dapple.rig.Provenance;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.site.SourceMark;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The invented rig of one of the demo's enclosures: a tube below a mesh and a spot above it, a slab, and bark to hide under. */
@Component
@Profile("demo")
class DemoRigs {
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Optional<DailyTimer> DAY =
            Optional.of(new DailyTimer(LocalTime.of(8, 0), LocalTime.of(18, 0)));
    private static final Provenance MEASURED = new Provenance(SourceMark.MEASURED, "calliper, three wires");

    private final RigChanging changing;
    private final Lamps lamps;

    DemoRigs(RigChanging changing, Lamps lamps) {
        this.changing = changing;
        this.lamps = lamps;
    }

    void hang(DemoTeam.Members members, long enclosureId, Instant at) {
        long site = members.siteId();
        RigEntry entry = new RigEntry(
                site,
                enclosureId,
                at,
                "Found at the first survey",
                members.supervisor(),
                UUID.randomUUID(),
                Optional.empty());
        Mount tube = new Mount(new Vec(0.85, 0.3, 0.47), DOWN, Optional.of(new Vec(1, 0, 0)));
        Mount spot = new Mount(new Vec(0.9, 0.3, 0.7), DOWN, Optional.empty());
        changing.setUpFirst(
                entry,
                new FirstRig(
                        List.of(fit(site, "L02", "basking tube", tube), fit(site, "L03", "basking spot", spot)),
                        List.of(lid()),
                        List.of(slab(), bark())));
    }

    private LampStep.Fit fit(long site, String tag, String place, Mount mount) {
        long lamp = lamps.inUse(site).stream()
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .map(LampFacts::id)
                .orElseThrow();
        return new LampStep.Fit(lamp, new Hanging(place, Optional.of(mount), DAY, Optional.empty()));
    }

    private static Cover lid() {
        CoverMaterial mesh = new CoverMaterial.Weave(0.000_64, 0.006_35, MEASURED);
        return new Cover("lid mesh", Optional.of(0.6), Optional.empty(), mesh, 1);
    }

    private static Furniture bark() {
        FurnitureShape shape = new FurnitureShape.Block(new Vec(0.02, 0.1, 0.1), new Vec(0.3, 0.5, 0.12), 0);
        return new Furniture("cork bark", shape, false);
    }

    private static Furniture slab() {
        FurnitureShape shape = new FurnitureShape.Block(new Vec(0.75, 0.15, 0), new Vec(1.05, 0.45, 0.1), 0);
        return new Furniture("slate slab", shape, true);
    }
}
