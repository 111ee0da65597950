package dapple.review;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.PointFacts;
import dapple.light.judging.Band;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** How an enclosure stands where more than the UV index is read: in UV zone 3 (2.9 to 7.4), over a surface of 38 to 42 °C. */
@StorageTest
class StandingsOfQuantitiesStorageTest {
    private static final SourcedLimit WARM_SURFACE = new SourcedLimit(
            Quantity.SURFACE_TEMPERATURE, LimitPlace.BASKING, new Band(38, 42), SourceMark.FROM_MEMORY, "for a test");

    @Autowired
    private Standings standings;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn person;
    private Home home;

    @BeforeEach
    void settleIn() {
        site = collection.site();
        person = collection.person(site, Role.KEEPER, Role.SUPERVISOR);
        SpeciesFacts species =
                collection.species(site, person, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM), WARM_SURFACE);
        home = collection.home(site, person, species);
        home.points().stream()
                .filter(point -> point.role() != PointRole.BASKING)
                .forEach(point -> read(point, Quantity.UV_INDEX, point.role() == PointRole.SHADE ? 0 : 1.2));
    }

    @Test
    void whatIsNotReadBesideTheUvIndexIsNoFinding() {
        read(home.basking(), Quantity.UV_INDEX, 4.6);
        assertThat(standing().state()).contains(State.ON_TARGET);
    }

    @Test
    void aColdSurfacePutsAnEnclosureOffItsTarget() {
        read(home.basking(), Quantity.UV_INDEX, 4.6);
        read(home.basking(), Quantity.SURFACE_TEMPERATURE, 30);
        assertThat(standing().state()).contains(State.TOO_WEAK);
        assertThat(leading()).isEqualTo(Quantity.SURFACE_TEMPERATURE);
    }

    @Test
    void ofTwoThatAreAsGraveTheUvIndexLeads() {
        read(home.basking(), Quantity.SURFACE_TEMPERATURE, 30);
        read(home.basking(), Quantity.UV_INDEX, 1.2);
        assertThat(standing().state()).contains(State.TOO_WEAK);
        assertThat(leading()).isEqualTo(Quantity.UV_INDEX);
    }

    @Test
    void theGraverLeadsWhicheverItIs() {
        read(home.basking(), Quantity.SURFACE_TEMPERATURE, 30);
        read(home.basking(), Quantity.UV_INDEX, 9);
        assertThat(standing().state()).contains(State.OVER_CEILING);
        assertThat(leading()).isEqualTo(Quantity.UV_INDEX);
    }

    @Test
    void aWarmSurfaceDoesNotMakeUpForAnOldUvIndex() {
        readOn(
                home.basking(),
                Quantity.UV_INDEX,
                4.6,
                person.settings().staleAfter().plusDays(1));
        read(home.basking(), Quantity.SURFACE_TEMPERATURE, 40);
        assertThat(standing().state()).contains(State.STALE);
    }

    private Standing standing() {
        return standings.of(site.id(), home.enclosureId(), person.settings()).standing();
    }

    private Quantity leading() {
        return standing().deciding().orElseThrow().quantity();
    }

    private void read(PointFacts point, Quantity quantity, double amount) {
        readOn(point, quantity, amount, Duration.ZERO);
    }

    private void readOn(PointFacts point, Quantity quantity, double amount, Duration ago) {
        logging.log(
                new Visitor(site.id(), person.personId()),
                new Entry(
                        UUID.randomUUID(),
                        new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id()),
                        collection.meter(site, quantity).id(),
                        amount,
                        clock.instant().minus(ago)));
    }
}
