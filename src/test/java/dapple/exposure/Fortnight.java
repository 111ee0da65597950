package dapple.exposure;

import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.judging.PointRole;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.rig.DailyTimer;
import dapple.rig.FirstRig;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.LampTimer;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.TestCollection;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.boot.test.context.TestComponent;

/**
 * Two weeks of one animal in London, 16 to 29 March 2026, whose last day has 23 hours: the tube is on from 0:00 to 10:00,
 * UV index 4.0 basking and 0.5 in shade on 16 and 23 March; on 24 March at noon another tube comes, under which 6.0 and 1.0
 * are read on the 29th.
 */
@TestComponent
class Fortnight {
    static final ZoneId LONDON = ZoneId.of("Europe/London");
    static final String ASKED = "?from=2026-03-16&to=2026-03-29";
    private static final Optional<LampTimer> UNTIL_TEN =
            Optional.of(new DailyTimer(LocalTime.MIDNIGHT, LocalTime.of(10, 0)));

    private final TestCollection collection;
    private final Animals animals;
    private final Enclosures enclosures;
    private final RigChanging changing;
    private final Rigs rigs;
    private final ReadingLogging logging;

    Fortnight(
            TestCollection collection,
            Animals animals,
            Enclosures enclosures,
            RigChanging changing,
            Rigs rigs,
            ReadingLogging logging) {
        this.collection = collection;
        this.animals = animals;
        this.enclosures = enclosures;
        this.changing = changing;
        this.rigs = rigs;
        this.logging = logging;
    }

    /** An enclosure with its points, and an animal that lives there since 1 January. */
    Kept kept() {
        SiteFacts site = collection.site();
        SignedIn person = collection.person(site, Role.KEEPER, Role.SUPERVISOR, Role.VET);
        SpeciesFacts species = collection.species(site, "Testudo hermanni");
        long enclosure = collection.emptyEnclosure(site);
        long animal = animals.add(site.id(), new NewAnimal("2025-0113", "Basil", species.id()))
                .id();
        animals.move(site.id(), new Arrival(animal, enclosure, at("2026-01-01T12:00"), person.personId()));
        return new Kept(
                site,
                person,
                species,
                enclosure,
                animal,
                collection.point(site, enclosure, "P1", PointRole.BASKING),
                collection.point(site, enclosure, "P3", PointRole.SHADE),
                collection.meter(site));
    }

    /** All that happened, as it happened. */
    Kept lived() {
        Kept kept = kept();
        hang(kept);
        read(kept, "2026-03-16T09:00", 4.0, 0.5);
        read(kept, "2026-03-23T09:00", 4.0, 0.5);
        swap(kept);
        read(kept, "2026-03-29T09:00", 6.0, 1.0);
        return kept;
    }

    void hang(Kept kept) {
        LampFacts tube = collection.lamp(kept.site, collection.lampModel(kept.site, LampClass.TUBE_T5));
        Hanging hanging = new Hanging("basking tube", Optional.empty(), UNTIL_TEN, Optional.empty());
        changing.setUpFirst(
                entry(kept, "2026-01-01T12:00"),
                new FirstRig(List.of(new LampStep.Fit(tube.id(), hanging)), List.of(), List.of()));
    }

    void swap(Kept kept) {
        long fitting = rigs.at(kept.site.id(), kept.enclosure, at("2026-03-24T11:00"))
                .fittings()
                .get(0)
                .id();
        LampFacts next = collection.lamp(kept.site, collection.lampModel(kept.site, LampClass.TUBE_T5));
        changing.make(entry(kept, "2026-03-24T12:00"), new LampStep.Swap(fitting, next.id()));
    }

    void read(Kept kept, String when, double basking, double shade) {
        UUID visit = UUID.randomUUID();
        log(kept, visit, kept.basking, basking, at(when));
        log(kept, visit, kept.shade, shade, at(when));
    }

    void planOff(Kept kept, String from, String to) {
        enclosures.planOff(
                kept.site.id(),
                new PlannedOffTime(kept.enclosure, at(from), Optional.of(at(to)), "Rest"),
                kept.person.personId());
    }

    private void log(Kept kept, UUID visit, PointFacts point, double index, Instant at) {
        VisitPlace place = new VisitPlace(visit, kept.enclosure, point.id());
        logging.log(
                new Visitor(kept.site.id(), kept.person.personId()),
                new Entry(UUID.randomUUID(), place, kept.meter.id(), index, at));
    }

    private static RigEntry entry(Kept kept, String when) {
        return new RigEntry(
                kept.site.id(),
                kept.enclosure,
                at(when),
                "",
                kept.person.personId(),
                UUID.randomUUID(),
                Optional.empty());
    }

    static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(LONDON).toInstant();
    }

    /** Where and with what the fortnight happens. */
    record Kept(
            SiteFacts site,
            SignedIn person,
            SpeciesFacts species,
            long enclosure,
            long animal,
            PointFacts basking,
            PointFacts shade,
            MeterFacts meter) {
        String page() {
            return "/animals/" + animal;
        }
    }
}
