package dapple.testing;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalKeeping;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.BodyLengthFacts;
import dapple.animal.NewAnimal;
import dapple.enclosure.Enclosures;
import dapple.enclosure.Facing;
import dapple.enclosure.InnerSize;
import dapple.enclosure.NewPoint;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.people.SignedIn;
import dapple.rig.Cover;
import dapple.rig.CoverMaterial;
import dapple.rig.FirstRig;
import dapple.rig.Furniture;
import dapple.rig.FurnitureShape;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.Mount;
import dapple.rig.Provenance;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.species.SpeciesFacts;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.boot.test.context.TestComponent;

/** Enclosures whose light can be computed; everything invented. */
@TestComponent
public class RiggedHomes {
    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final Provenance MEASURED = new Provenance(SourceMark.MEASURED, "with and without, one meter");

    private final TestCollection collection;
    private final Enclosures enclosures;
    private final Animals animals;
    private final AnimalKeeping keeping;
    private final RigChanging changing;
    private final Clock clock;

    RiggedHomes(
            TestCollection collection,
            Enclosures enclosures,
            Animals animals,
            AnimalKeeping keeping,
            RigChanging changing,
            Clock clock) {
        this.collection = collection;
        this.enclosures = enclosures;
        this.animals = animals;
        this.keeping = keeping;
        this.changing = changing;
        this.clock = clock;
    }

    /** 1.20 × 0.60 × 0.70 m, with an animal and four points that have coordinates; nothing hangs there. */
    public Home unlit(SiteFacts site, SignedIn mover, SpeciesFacts species) {
        int number = NUMBER.incrementAndGet();
        long room = enclosures.addRoom(site.id(), "Lit room " + number, number);
        long enclosure =
                enclosures.add(site.id(), room, "R" + number, number, Optional.of(new InnerSize(1.2, 0.6, 0.7)));
        return new Home(
                enclosure,
                house(site, mover, species, enclosure),
                point(site, enclosure, "P1", PointRole.BASKING, new Position(0.6, 0.3, 0.25)),
                point(site, enclosure, "P2", PointRole.GRADIENT, new Position(0.3, 0.3, 0.05)),
                point(site, enclosure, "P3", PointRole.SHADE, new Position(1.15, 0.3, 0.02)),
                point(site, enclosure, "P4", PointRole.NEAREST_REACHABLE, new Position(0.6, 0.3, 0.5)));
    }

    /** One more animal in an enclosure, since an hour. */
    public AnimalFacts house(SiteFacts site, SignedIn mover, SpeciesFacts species, long enclosureId) {
        int number = NUMBER.incrementAndGet();
        AnimalFacts animal =
                animals.add(site.id(), new NewAnimal("2025-" + number, "Resident " + number, species.id()));
        Instant hourAgo = clock.instant().minus(Duration.ofHours(1));
        animals.move(site.id(), new Arrival(animal.id(), enclosureId, hourAgo, mover.personId()));
        return animal;
    }

    public void measureBody(SiteFacts site, SignedIn by, AnimalFacts animal, double metres) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), site.timeZone());
        keeping.addLength(site.id(), animal.id(), new BodyLengthFacts(metres, today.minusDays(1)), by.personId());
    }

    private PointFacts point(SiteFacts site, long enclosure, String code, PointRole role, Position at) {
        NewPoint point = new NewPoint(code, "a place", role, Facing.STRONGEST, Optional.of(at));
        return enclosures.addPoint(site.id(), enclosure, point);
    }

    /** The same under a tube, which gives a UV index of 3.0 at 0.3 m, and a mesh; with a slab to lie on. */
    public Home lit(SiteFacts site, SignedIn mover, SpeciesFacts species) {
        Home home = unlit(site, mover, species);
        LampFacts lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        measureBody(site, mover, home.animal(), 0.2);
        light(site, mover, home, lamp, over());
        return home;
    }

    /** In the middle, 0.68 m above the floor. */
    public static Optional<Mount> over() {
        return Optional.of(RigExamples.above(0.6, 0.3, 0.68));
    }

    /** Hangs a lamp over an enclosure, two days ago. */
    public void light(SiteFacts site, SignedIn by, Home home, LampFacts lamp, Optional<Mount> mount) {
        Hanging hanging = new Hanging("basking tube", mount, Optional.of(RigExamples.tenHours()), Optional.empty());
        RigEntry entry = new RigEntry(
                site.id(),
                home.enclosureId(),
                clock.instant().minus(Duration.ofDays(2)),
                "first survey",
                by.personId(),
                UUID.randomUUID(),
                Optional.empty());
        changing.setUpFirst(
                entry, new FirstRig(List.of(new LampStep.Fit(lamp.id(), hanging)), List.of(mesh()), List.of(slab())));
    }

    private static Cover mesh() {
        CoverMaterial weave = new CoverMaterial.Weave(0.000_25, 0.002_5, MEASURED);
        return new Cover("lid mesh", Optional.of(0.66), Optional.empty(), weave, 1);
    }

    private static Furniture slab() {
        return new Furniture("slab", new FurnitureShape.Block(new Vec(0.4, 0.1, 0), new Vec(0.8, 0.5, 0.2), 0), true);
    }
}
