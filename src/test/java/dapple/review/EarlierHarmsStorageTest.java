package dapple.review;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Whom a first target alarms that counts for readings before it: of a point only what was read there last. */
@StorageTest
class EarlierHarmsStorageTest {
    private static final UvZone ZONE_3 = new UvZone(3, LightMethod.SUNBEAM);

    /** The ceiling of UV zone 3 is 8. */
    private static final double OVER_CEILING = 9.3;

    private static final double ENOUGH = 4.6;

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Targets targets;

    @Autowired
    private ZoneLimits zoneLimits;

    @Autowired
    private Alarms alarms;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn person;
    private SpeciesFacts species;
    private MeterFacts meter;
    private Home home;
    private Instant begin;

    @BeforeEach
    void settleIn() {
        site = collection.site();
        person = collection.person(site, Role.KEEPER, Role.SUPERVISOR);
        species = collection.species(site, "Laudakia stellio");
        meter = collection.meter(site);
        home = collection.home(site, person, species);
        begin = clock.instant().minus(Duration.ofMinutes(50));
    }

    @Test
    void theNewestReadingOfAPointAlarmsAtOnce() {
        read(1, ENOUGH);
        long newest = read(2, OVER_CEILING);
        approve();
        assertThat(alarms.unseen(site.id())).extracting(AlarmFacts::readingId).containsExactly(newest);
    }

    @Test
    void whatWasReadAgainSinceAlarmsNobody() {
        read(1, OVER_CEILING);
        read(2, ENOUGH);
        approve();
        assertThat(alarms.unseen(site.id())).isEmpty();
    }

    private void approve() {
        Approval approval =
                new Approval(species.id(), ZONE_3, zoneLimits.of(ZONE_3), person.personId(), "agreed with the team");
        targets.approve(site.id(), approval.forEarlierReadings(true));
    }

    private long read(int minute, double uvi) {
        VisitPlace place = new VisitPlace(
                UUID.randomUUID(), home.enclosureId(), home.basking().id());
        Instant at = begin.plus(Duration.ofMinutes(minute));
        return logging.log(Visitor.of(person), new Entry(UUID.randomUUID(), place, meter.id(), uvi, at));
    }
}
