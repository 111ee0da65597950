package dapple.review;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.Targets;
import dapple.target.ZoneLimits;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** How an enclosure stands when what is needed there changes after it was read. */
@StorageTest
class StandingsStorageTest {
    private static final UvZone OPEN_BASKERS = new UvZone(3, LightMethod.SUNBEAM);
    private static final UvZone PARTIAL_BASKERS = new UvZone(2, LightMethod.SUNBEAM);

    /** On target in UV zone 3, whose basking range is 2.9 to 7.4. */
    private static final double ENOUGH = 4.6;

    private static final double TOO_LITTLE = 1.2;

    @Autowired
    private Standings standings;

    @Autowired
    private Targets targets;

    @Autowired
    private ZoneLimits zoneLimits;

    @Autowired
    private Animals animals;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn person;
    private SpeciesFacts species;
    private MeterFacts meter;
    private Home home;

    @BeforeEach
    void settleIn() {
        site = collection.site();
        person = collection.person(site, Role.KEEPER, Role.SUPERVISOR);
        species = collection.species(site, person, "Pogona vitticeps", OPEN_BASKERS);
        meter = collection.meter(site);
        home = collection.home(site, person, species);
    }

    @Test
    void nothingIsUnreadWhileNothingChanges() {
        readAll(ENOUGH);
        assertThat(standing().state()).contains(State.ON_TARGET);
        assertThat(standing().unread()).isEmpty();
    }

    @Test
    void anEnclosureOnTargetIsToBeReadUnderItsNewTarget() {
        readAll(ENOUGH);
        approve(species, PARTIAL_BASKERS);
        assertThat(standing().state()).contains(State.STALE);
        assertThat(why()).contains(Unread.Why.TARGET);
        assertThat(standing().isOverdue(person.settings(), clock.instant())).isTrue();
    }

    @Test
    void readUnderTheNewTargetItIsJudgedByIt() {
        readAll(ENOUGH);
        approve(species, PARTIAL_BASKERS);
        readAll(ENOUGH);
        assertThat(standing().state()).contains(State.OVER_CEILING);
    }

    @Test
    void whatIsAmissStaysSoUnderANewTarget() {
        readAll(TOO_LITTLE);
        approve(species, PARTIAL_BASKERS);
        assertThat(standing().state()).contains(State.TOO_WEAK);
    }

    @Test
    void aTargetGivenToASpeciesThatHadNoneAsksForAReading() {
        SpeciesFacts without = collection.species(site, "Laudakia stellio");
        home = collection.home(site, person, without);
        readAll(ENOUGH);
        assertThat(standing().state()).contains(State.NO_TARGET);
        approve(without, OPEN_BASKERS);
        assertThat(why()).contains(Unread.Why.TARGET);
    }

    @Test
    void aFirstTargetForEarlierReadingsJudgesWhatWasReadBefore() {
        SpeciesFacts without = collection.species(site, "Laudakia stellio");
        home = collection.home(site, person, without);
        readAll(ENOUGH);
        targets.approve(site.id(), approval(without, OPEN_BASKERS).forEarlierReadings(true));
        assertThat(standing().state()).contains(State.ON_TARGET);
        assertThat(standing().unread()).isEmpty();
    }

    @Test
    void anotherSpeciesThatMovesInAsksForAReading() {
        readAll(ENOUGH);
        moveIn(collection.species(site, person, "Varanus acanthurus", new UvZone(4, LightMethod.SUNBEAM)));
        assertThat(standing().state()).contains(State.STALE);
        assertThat(why()).contains(Unread.Why.ARRIVAL);
    }

    @Test
    void oneMoreOfItsKindAsksForNone() {
        readAll(ENOUGH);
        moveIn(species);
        assertThat(standing().state()).contains(State.ON_TARGET);
    }

    @Test
    void aSiteIsSeenAsItsEnclosuresAre() {
        readAll(ENOUGH);
        approve(species, PARTIAL_BASKERS);
        assertThat(standings.at(site.id(), person.settings())).containsExactly(standing());
    }

    private Standing standing() {
        return standings.of(site.id(), home.enclosureId(), person.settings()).standing();
    }

    private Optional<Unread.Why> why() {
        return standing().unread().map(Unread::why);
    }

    private void approve(SpeciesFacts kind, UvZone zone) {
        targets.approve(site.id(), approval(kind, zone));
    }

    private Approval approval(SpeciesFacts kind, UvZone zone) {
        return new Approval(kind.id(), zone, zoneLimits.of(zone), person.personId(), "zone revised");
    }

    private void moveIn(SpeciesFacts kind) {
        AnimalFacts animal = animals.add(site.id(), new NewAnimal("2026-X", "Newcomer", kind.id()));
        animals.move(site.id(), new Arrival(animal.id(), home.enclosureId(), clock.instant(), person.personId()));
    }

    private void readAll(double basking) {
        UUID visit = UUID.randomUUID();
        for (PointFacts point : home.points()) {
            double amount =
                    point.role() == PointRole.SHADE ? 0 : basking / (point.role() == PointRole.GRADIENT ? 4 : 1);
            logging.log(
                    new Visitor(site.id(), person.personId()),
                    new Entry(
                            UUID.randomUUID(),
                            new VisitPlace(visit, home.enclosureId(), point.id()),
                            meter.id(),
                            amount,
                            clock.instant()));
        }
    }
}
