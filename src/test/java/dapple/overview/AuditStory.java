package dapple.overview;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.order.NewOrder;
import dapple.order.Ordered;
import dapple.order.Ordering;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Correction;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.review.Alarms;
import dapple.rig.LampStep;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.rig.RigRecords;
import dapple.rig.RigStep;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.springframework.boot.test.context.TestComponent;

/** Tells, step by step, what happened in one enclosure; each step gives the instant after it. */
@TestComponent
class AuditStory {
    /** On target in zone 3, whose basking range is 2.9 to 7.4 [baines2016]; half of it is too weak. */
    static final double SHOWN = 4.0;

    /** Halved by the late calibration it is on target again. */
    static final double CORRECTED = 8.0;

    /** The ceiling of zone 3 is 8.0 (common practice, no source). */
    private static final double OVER = 9.0;

    static final double FACTOR = 0.5;

    private final TestCollection collection;
    private final RigChanging rigs;
    private final RigRecords records;
    private final ReadingLogging logging;
    private final Meters meters;
    private final Ordering ordering;
    private final Alarms alarms;
    private final Animals animals;
    private final Clock clock;

    AuditStory(
            TestCollection collection,
            RigChanging rigs,
            RigRecords records,
            ReadingLogging logging,
            Meters meters,
            Ordering ordering,
            Alarms alarms,
            Animals animals,
            Clock clock) {
        this.collection = collection;
        this.rigs = rigs;
        this.records = records;
        this.logging = logging;
        this.meters = meters;
        this.ordering = ordering;
        this.alarms = alarms;
        this.animals = animals;
        this.clock = clock;
    }

    Told begin() {
        SiteFacts site = collection.site();
        SignedIn person = collection.person(site, Role.SUPERVISOR, Role.VET, Role.LIGHTING_LEAD);
        UvZone zone = new UvZone(3, LightMethod.SUNBEAM);
        SpeciesFacts species = collection.species(site, person, "Pogona vitticeps", zone);
        Home home = collection.home(site, person, species);
        return new Told(site, person, home, collection.meter(site));
    }

    /** One telling. */
    final class Told {
        final SiteFacts site;
        final SignedIn person;
        final Home home;
        final MeterFacts meter;
        private long reading;

        private Told(SiteFacts site, SignedIn person, Home home, MeterFacts meter) {
            this.site = site;
            this.person = person;
            this.home = home;
            this.meter = meter;
        }

        Instant now() {
            return clock.instant();
        }

        Instant minutesAgo(long minutes) {
            return now().minus(Duration.ofMinutes(minutes));
        }

        /** Three hours ago, said only now. */
        Instant hangALampLate() {
            LampFacts lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
            return change(180, new LampStep.Fit(lamp.id(), RigExamples.hanging("basking tube")));
        }

        /** An hour and a half ago, said only now. */
        Instant takeItOutLate() {
            long fitting = records.at(site.id(), home.enclosureId(), now())
                    .rig()
                    .fittings()
                    .get(0)
                    .id();
            return change(90, new LampStep.TakeOut(fitting));
        }

        private Instant change(long minutes, RigStep step) {
            rigs.make(
                    new RigEntry(
                            site.id(),
                            home.enclosureId(),
                            minutesAgo(minutes),
                            "for a test",
                            person.personId(),
                            UUID.randomUUID(),
                            Optional.empty()),
                    step);
            return now();
        }

        Instant read() {
            return read(home.basking(), SHOWN);
        }

        Instant readOverTheCeiling() {
            return read(home.basking(), OVER);
        }

        Instant readInTheShade() {
            return read(home.shade(), 0.1);
        }

        /** Another animal of another species, with a target of its own. */
        void settleAnother() {
            String name = UUID.randomUUID().toString();
            SpeciesFacts species = collection.species(site, person, name, new UvZone(2, LightMethod.SUNBEAM));
            AnimalFacts animal = animals.add(site.id(), new NewAnimal(name, name, species.id()));
            animals.move(site.id(), new Arrival(animal.id(), home.enclosureId(), minutesAgo(10), person.personId()));
        }

        Instant seeTheAlarm() {
            alarms.unseen(site.id()).forEach(alarm -> alarms.see(site.id(), alarm.id(), person.personId()));
            return now();
        }

        private Instant read(PointFacts point, double shown) {
            VisitPlace place = new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id());
            reading = logging.log(visitor(), new Entry(UUID.randomUUID(), place, meter.id(), shown, now()));
            return now();
        }

        private Visitor visitor() {
            return new Visitor(site.id(), person.personId(), true);
        }

        Instant correct() {
            logging.correct(visitor(), reading, new Correction(UUID.randomUUID(), CORRECTED, "a digit was mistyped"));
            return now();
        }

        /** Of two days ago, entered only now. */
        Instant calibrateLate() {
            Instant from = now().minus(Duration.ofDays(2));
            LocalDate due = LocalDate.ofInstant(from, site.timeZone()).plusYears(1);
            meters.calibrate(site.id(), meter.id(), new NewCalibration(from, FACTOR, due, "C-17"), person.personId());
            return now();
        }

        Instant order() {
            LocalDate week = LocalDate.ofInstant(now(), site.timeZone()).plusDays(7);
            Ordered off = new Ordered.UvOff();
            ordering.place(
                    site.id(),
                    new NewOrder(
                            home.animal().id(),
                            off,
                            "eyes shut",
                            Optional.empty(),
                            week,
                            UUID.randomUUID(),
                            person.personId()));
            return now();
        }
    }
}
