package dapple.demo;

import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.light.geometry.Vec;
import dapple.rig.Circuits;
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

/** The invented rig of one of the demo's enclosures: a tube and a spot over a mesh, and a slab. */
@Component
@Profile("demo")
class DemoRigs {
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Optional<DailyTimer> DAY =
            Optional.of(new DailyTimer(LocalTime.of(8, 0), LocalTime.of(18, 0)));
    private static final Provenance MEASURED = new Provenance(SourceMark.MEASURED, "calliper, three wires");

    private final RigChanging changing;
    private final Lamps lamps;
    private final Circuits circuits;

    DemoRigs(RigChanging changing, Lamps lamps, Circuits circuits) {
        this.changing = changing;
        this.lamps = lamps;
        this.circuits = circuits;
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
        Optional<Long> circuit =
                Optional.of(circuits.add(site, Optional.empty(), "A1").id());
        Mount tube = new Mount(new Vec(0.6, 0.3, 0.66), DOWN, Optional.of(new Vec(1, 0, 0)));
        Mount spot = new Mount(new Vec(0.9, 0.3, 0.7), DOWN, Optional.empty());
        changing.setUpFirst(
                entry,
                new FirstRig(
                        List.of(
                                fit(site, "L02", "basking tube", tube, circuit),
                                fit(site, "L03", "basking spot", spot, circuit)),
                        List.of(lid()),
                        List.of(slab())));
    }

    private LampStep.Fit fit(long site, String tag, String place, Mount mount, Optional<Long> circuit) {
        long lamp = lamps.inUse(site).stream()
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .map(LampFacts::id)
                .orElseThrow();
        return new LampStep.Fit(lamp, new Hanging(place, Optional.of(mount), DAY, circuit));
    }

    private static Cover lid() {
        CoverMaterial mesh = new CoverMaterial.Weave(0.000_64, 0.006_35, MEASURED);
        return new Cover("lid mesh", Optional.of(0.6), Optional.empty(), mesh, 1);
    }

    private static Furniture slab() {
        FurnitureShape shape = new FurnitureShape.Block(new Vec(0.75, 0.15, 0), new Vec(1.05, 0.45, 0.1), 0);
        return new Furniture("slate slab", shape, true);
    }
}
