package dapple.expectation;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.PointFacts;
import dapple.expectation.Expectations.Place;
import dapple.light.expectation.Expected;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.RecentReading;
import dapple.reading.RecentReadings;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class ExpectationsStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private RecentReadings recent;

    @Autowired
    private Expectations expectations;

    @Autowired
    private Rigs rigs;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private MeterFacts meter;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        meter = collection.meter(site);
        home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
    }

    @Test
    void thereAreNoMoreReadingsThanAskedFor() {
        for (int week = 7; week > 0; week--) {
            read(home.basking(), week, week);
        }
        assertThat(recent.in(site.id(), List.of(home.enclosureId()), 3))
                .extracting(RecentReading::amount)
                .containsExactly(1.0, 2.0, 3.0);
    }

    @Test
    void everyPointHasItsOwn() {
        read(home.basking(), 3.0, 1);
        read(home.shade(), 0.1, 1);
        assertThat(recent.in(site.id(), List.of(home.enclosureId()), 3))
                .extracting(RecentReading::pointId)
                .containsExactlyInAnyOrder(home.basking().id(), home.shade().id());
    }

    @Test
    void anotherSiteHasNone() {
        read(home.basking(), 3.0, 1);
        assertThat(recent.in(collection.site().id(), List.of(home.enclosureId()), 3))
                .isEmpty();
    }

    @Test
    void noEnclosureHasNone() {
        assertThat(recent.in(site.id(), List.of(), 3)).isEmpty();
    }

    @Test
    void whatWasReadIsExpectedAgain() {
        read(home.basking(), 3.0, 2);
        read(home.basking(), 3.2, 1);
        Optional<Expected> expected = expected(home.basking());
        assertThat(expected.map(Expected::basis)).contains(Expected.Basis.READINGS);
        assertThat(expected.map(one -> one.range().contains(3.1) && !one.range().contains(31)))
                .contains(true);
    }

    @Test
    void nothingIsExpectedWhereNothingIsKnown() {
        assertThat(expected(home.basking())).isEmpty();
    }

    private Optional<Expected> expected(PointFacts point) {
        Map<Place, Expected> found = expectations.at(
                new Expectations.Site(site.id(), keeper.zone()),
                List.of(point),
                rigs.nowAtSite(site.id()),
                recent.in(site.id(), List.of(home.enclosureId()), Expectations.NEWEST),
                Map.of(Quantity.UV_INDEX, 0.1));
        return Optional.ofNullable(found.get(new Place(point.id(), Quantity.UV_INDEX)));
    }

    private void read(PointFacts point, double uvIndex, int weeksAgo) {
        Instant at = clock.instant().minus(Duration.ofDays(7L * weeksAgo));
        VisitPlace place = new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id());
        logging.log(Visitor.of(keeper), new Entry(UUID.randomUUID(), place, meter.id(), uvIndex, at));
    }
}
