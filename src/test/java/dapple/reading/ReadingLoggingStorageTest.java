package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.PointFacts;
import dapple.light.judging.State;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.target.LightMethod;
import dapple.target.SpeciesFacts;
import dapple.target.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class ReadingLoggingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Readings readings;

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
        SpeciesFacts species = collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        home = collection.home(site, keeper, species);
    }

    @Test
    void aWeakReadingBecomesTheNewestOfItsPoint() {
        log(UUID.randomUUID(), UUID.randomUUID(), 1.7);
        assertThat(stateOf(home.basking())).contains(State.TOO_WEAK);
    }

    @Test
    void theSameEntrySentTwiceIsStoredOnce() {
        UUID key = UUID.randomUUID();
        UUID visit = UUID.randomUUID();
        assertThat(log(key, visit, 3.4)).isEqualTo(log(key, visit, 3.4));
    }

    private Optional<State> stateOf(PointFacts point) {
        return Optional.ofNullable(
                        readings.latestIn(site.id(), home.enclosureId()).get(point.id()))
                .flatMap(ReadingView::state);
    }

    private long log(UUID key, UUID visit, double uvi) {
        Instant now = clock.instant();
        VisitPlace place =
                new VisitPlace(visit, home.enclosureId(), home.basking().id());
        return logging.log(Visitor.of(keeper), new Entry(key, place, meter.id(), uvi, now));
    }
}
