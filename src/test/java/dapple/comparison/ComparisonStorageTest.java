package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.TakenException;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class ComparisonStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Comparisons comparisons;

    @Autowired
    private Upkeeping upkeeping;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn supervisor;
    private MeterFacts first;
    private MeterFacts second;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        first = collection.meter(site);
        second = collection.meter(site);
        home = collection.home(site, supervisor, collection.species(site, "Pogona vitticeps"));
    }

    @Test
    void theLastReadingEndsIt() {
        long id = begin();
        readAll(first);
        readAll(second);
        assertThat(comparisons.get(site.id(), id).isUnderWay()).isFalse();
    }

    @Test
    void beforeTheLastReadingItIsUnderWay() {
        long id = begin();
        readAll(first);
        read(home.basking(), second);
        assertThat(comparisons.get(site.id(), id).isUnderWay()).isTrue();
    }

    @Test
    void ofTwoLastReadingsAtTheSameInstantOneEndsIt() {
        long id = begin();
        readAll(first);
        read(home.shade(), second);
        Together.run(() -> read(home.basking(), second), () -> read(home.gradient(), second));
        assertThat(comparisons.get(site.id(), id).isUnderWay()).isFalse();
    }

    @Test
    void aQuantityIsComparedOnceAtATime() {
        assertThat(Together.run(this::begin, this::begin)).singleElement().isInstanceOf(TakenException.class);
    }

    @Test
    void whatIsSentTwiceBeginsOnce() {
        NewComparison sent = fresh();
        assertThat(comparisons.begin(sent)).isEqualTo(comparisons.begin(sent));
    }

    @Test
    void aMeterOfAnotherSiteIsNotFound() {
        long foreign = collection.meter(collection.site()).id();
        NewComparison wrong = new NewComparison(
                site.id(),
                supervisor.personId(),
                UUID.randomUUID(),
                Quantity.UV_INDEX,
                List.of(first.id(), foreign),
                points());
        assertThatThrownBy(() -> comparisons.begin(wrong)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void itEndsOnce() {
        long id = begin();
        end(id);
        assertThatThrownBy(() -> end(id)).isInstanceOf(ConflictException.class);
    }

    @Test
    void afterItsEndAnotherMayBegin() {
        end(begin());
        assertThat(begin()).isPositive();
    }

    @Test
    void twoMetersThatWereNeverComparedAreDue() {
        assertThat(upkeeping.today(supervisor).comparisons())
                .singleElement()
                .matches(due -> due.on().isEmpty() && due.underWay().isEmpty());
    }

    @Test
    void afterACompleteOneTheNextIsDueInAQuarter() {
        begin();
        readAll(first);
        readAll(second);
        assertThat(upkeeping.today(supervisor).comparisons()).isEmpty();
    }

    @Test
    void whatWasEndedBeforeStaysDue() {
        end(begin());
        assertThat(upkeeping.today(supervisor).comparisons())
                .singleElement()
                .matches(due -> due.on().isEmpty());
    }

    @Test
    void oneMeterIsNotCompared() {
        SiteFacts other = collection.site();
        collection.meter(other);
        assertThat(upkeeping.comparisons(collection.person(other, Role.SUPERVISOR)))
                .isEmpty();
    }

    private long begin() {
        return comparisons.begin(fresh());
    }

    private NewComparison fresh() {
        return new NewComparison(
                site.id(),
                supervisor.personId(),
                UUID.randomUUID(),
                Quantity.UV_INDEX,
                List.of(first.id(), second.id()),
                points());
    }

    private List<Long> points() {
        return List.of(home.basking().id(), home.gradient().id(), home.shade().id());
    }

    private void end(long id) {
        comparisons.end(
                site.id(), id, new ComparisonFacts.Broken(clock.instant(), supervisor.personId(), "M2 is broken"));
    }

    private void readAll(MeterFacts meter) {
        List.of(home.basking(), home.gradient(), home.shade()).forEach(point -> read(point, meter));
    }

    private void read(PointFacts point, MeterFacts meter) {
        VisitPlace place = new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id());
        logging.log(Visitor.of(supervisor), new Entry(UUID.randomUUID(), place, meter.id(), 1.7, clock.instant()));
    }
}
