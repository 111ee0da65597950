package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

@StorageTest
class ReadingLoggingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Readings readings;

    @Autowired
    private Meters meters;

    @Autowired
    private Animals animals;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private Clock clock;

    private final UUID visit = UUID.randomUUID();
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
        log(home.basking(), 1.7);
        assertThat(stateOf(home.basking())).contains(State.TOO_WEAK);
    }

    @Test
    void aLaterReadingTakesThePlaceOfTheNewest() {
        log(home.basking(), 1.7);
        log(home.basking(), 4.5);
        assertThat(stateOf(home.basking())).contains(State.ON_TARGET);
    }

    @Test
    void aReadingThatArrivesLateLeavesTheNewestAlone() {
        Instant earlier = clock.instant();
        log(home.basking(), 4.5);
        log(home.basking(), 1.7, earlier);
        assertThat(stateOf(home.basking())).contains(State.ON_TARGET);
    }

    @Test
    void aStateLastsSinceTheFirstReadingOfItsRun() {
        Instant first = clock.instant();
        log(home.basking(), 1.7, first);
        log(home.basking(), 1.6);
        assertThat(newest(home.basking()).flatMap(ReadingView::stateSince)).contains(first);
    }

    @Test
    void aReadingThatArrivesLateMayProlongTheRun() {
        Instant earlier = clock.instant();
        log(home.basking(), 1.6);
        log(home.basking(), 1.7, earlier);
        assertThat(newest(home.basking()).flatMap(ReadingView::stateSince)).contains(earlier);
    }

    @Test
    void theSameEntrySentTwiceIsStoredOnce() {
        Entry entry = entry(home.basking(), 3.4, clock.instant());
        long first = logging.log(visitor(), entry);
        assertThat(logging.log(visitor(), entry)).isEqualTo(first);
    }

    @Test
    void theSameEntrySentTwiceAtOnceIsStoredOnce() {
        Entry entry = entry(home.basking(), 3.4, clock.instant());
        List<Throwable> thrown = Together.run(
                () -> logging.log(visitor(), entry),
                () -> logging.log(visitor(), entry),
                () -> logging.log(visitor(), entry));
        assertThat(thrown).isEmpty();
        assertThat(rows("select count(*) from reading where entry_key = ?", entry.key()))
                .isEqualTo(1);
    }

    @Test
    void pointsOfOneVisitReadAtOnceAreAllStored() {
        Instant now = clock.instant();
        List<Throwable> thrown = Together.run(
                () -> logging.log(visitor(), entry(home.basking(), 4.5, now)),
                () -> logging.log(visitor(), entry(home.gradient(), 1.5, now)),
                () -> logging.log(visitor(), entry(home.shade(), 0.0, now)));
        assertThat(thrown).isEmpty();
        assertThat(stateOf(home.gradient())).contains(State.ON_TARGET);
    }

    @Test
    void aKeyOfSomebodyElsesEntryIsRefused() {
        Entry entry = entry(home.basking(), 3.4, clock.instant());
        logging.log(visitor(), entry);
        Visitor other = Visitor.of(collection.person(site, Role.KEEPER));
        assertThatThrownBy(() -> logging.log(other, entry)).isInstanceOf(ConflictException.class);
    }

    @Test
    void aPointOfAnotherSiteIsNotFound() {
        SiteFacts elsewhere = collection.site();
        Visitor stranger = Visitor.of(collection.person(elsewhere, Role.KEEPER));
        assertThatThrownBy(() -> logging.log(stranger, entry(home.basking(), 3.4, clock.instant())))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void aMeterOfAnotherSiteIsNotFound() {
        meter = collection.meter(collection.site());
        assertThatThrownBy(() -> log(home.basking(), 3.4)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void aGradientPointIsJudgedWhenShadeIsReadToo() {
        log(home.basking(), 4.5);
        log(home.gradient(), 1.5);
        assertThat(stateOf(home.gradient())).isEmpty();
        log(home.shade(), 0.0);
        assertThat(stateOf(home.gradient())).contains(State.ON_TARGET);
    }

    @Test
    void aVerdictThatIsReplacedStaysOnRecord() {
        log(home.basking(), 4.5);
        long gradient = log(home.gradient(), 1.5);
        log(home.shade(), 0.0);
        assertThat(rows("select count(*) from verdict where reading_id = ?", gradient))
                .isEqualTo(2);
    }

    @Test
    void aVerdictThatStillSaysTheSameIsNotReplaced() {
        long basking = log(home.basking(), 4.5);
        log(home.shade(), 0.0);
        assertThat(rows("select count(*) from verdict where reading_id = ?", basking))
                .isEqualTo(1);
    }

    @Test
    void aCorrectionTakesThePlaceOfTheMistypedReading() {
        long mistyped = log(home.basking(), 28);
        logging.correct(visitor(), mistyped, new Correction(UUID.randomUUID(), 4.5, "point missed"));
        assertThat(stateOf(home.basking())).contains(State.ON_TARGET);
    }

    @Test
    void aCorrectionLeavesTheMistypedReadingOnRecord() {
        long mistyped = log(home.basking(), 28);
        logging.correct(visitor(), mistyped, new Correction(UUID.randomUUID(), 4.5, "point missed"));
        assertThat(database.queryForObject("select amount from reading where id = ?", Double.class, mistyped))
                .isEqualTo(28);
    }

    @Test
    void aReadingIsCorrectedOnce() {
        long mistyped = log(home.basking(), 28);
        logging.correct(visitor(), mistyped, new Correction(UUID.randomUUID(), 4.5, "point missed"));
        assertThatThrownBy(() -> logging.correct(
                        visitor(), mistyped, new Correction(UUID.randomUUID(), 4.6, "point missed again")))
                .isInstanceOf(ConflictException.class);
    }

    @Test
    void aCorrectionSentTwiceIsStoredOnce() {
        long mistyped = log(home.basking(), 28);
        Correction correction = new Correction(UUID.randomUUID(), 4.5, "point missed");
        long first = logging.correct(visitor(), mistyped, correction);
        assertThat(logging.correct(visitor(), mistyped, correction)).isEqualTo(first);
    }

    @Test
    void theCalibrationInForceCountsTowardsTheVerdict() {
        NewCalibration half = new NewCalibration(
                clock.instant().minus(Duration.ofDays(1)), 0.5, LocalDate.of(2030, 1, 1), "for a test");
        meters.calibrate(site.id(), meter.id(), half, keeper.personId());
        log(home.basking(), 4.5);
        assertThat(newest(home.basking()).map(view -> view.reading().amount())).contains(2.25);
    }

    @Test
    void aSpeciesWithoutTargetIsSaidToHaveNone() {
        Home bare = collection.home(site, keeper, collection.species(site, "Physignathus cocincinus"));
        log(bare.basking(), 4.5);
        assertThat(stateOf(bare.basking())).contains(State.NO_TARGET);
    }

    @Test
    void theGravestVerdictOfTwoSpeciesCounts() {
        SpeciesFacts shy = collection.species(site, keeper, "Correlophus ciliatus", new UvZone(1, LightMethod.SHADE));
        join(shy);
        log(home.basking(), 4.5);
        assertThat(stateOf(home.basking())).contains(State.OVER_CEILING);
    }

    @Test
    void eachOfTwoSpeciesHasItsOwnVerdict() {
        SpeciesFacts shy = collection.species(site, keeper, "Correlophus ciliatus", new UvZone(1, LightMethod.SHADE));
        join(shy);
        long reading = log(home.basking(), 4.5);
        assertThat(readings.judged(site.id(), reading))
                .extracting(view -> view.state().orElseThrow())
                .containsExactly(State.OVER_CEILING, State.ON_TARGET);
    }

    @Test
    void aKeepersPointIsStoredWithoutVerdict() {
        PointFacts face = collection.point(site, home.enclosureId(), "P9", PointRole.KEEPER);
        log(face, 9.9);
        assertThat(stateOf(face)).isEmpty();
    }

    @Test
    void aPointThatCouldNotBeReadIsNotedOnce() {
        VisitPlace place =
                new VisitPlace(visit, home.enclosureId(), home.basking().id());
        Unread unread = new Unread(UUID.randomUUID(), place, Outcome.COULD_NOT_REACH, clock.instant());
        logging.note(visitor(), unread);
        logging.note(visitor(), unread);
        assertThat(rows("select count(*) from unread_point where entry_key = ?", unread.key()))
                .isEqualTo(1);
    }

    @Test
    void theDatabaseKeepsInstantsAsTheyWere() {
        Instant taken = clock.instant();
        log(home.basking(), 4.5, taken);
        assertThat(newest(home.basking()).map(view -> view.reading().takenAt())).contains(taken);
    }

    private void join(SpeciesFacts species) {
        long newcomer = animals.add(site.id(), new NewAnimal("newcomer", "Newcomer", species.id()))
                .id();
        Instant before = clock.instant().minus(Duration.ofMinutes(10));
        animals.move(site.id(), new Arrival(newcomer, home.enclosureId(), before, keeper.personId()));
    }

    private Integer rows(String count, Object key) {
        Integer found = database.queryForObject(count, Integer.class, key);
        return found == null ? 0 : found;
    }

    private Optional<ReadingView> newest(PointFacts point) {
        return readings
                .latestIn(site.id(), point.enclosureId(), List.of(point))
                .getOrDefault(point.id(), List.of())
                .stream()
                .findFirst();
    }

    private Optional<State> stateOf(PointFacts point) {
        return newest(point).flatMap(ReadingView::state);
    }

    private long log(PointFacts point, double uvi) {
        return log(point, uvi, clock.instant());
    }

    private long log(PointFacts point, double uvi, Instant takenAt) {
        return logging.log(visitor(), entry(point, uvi, takenAt));
    }

    private Visitor visitor() {
        return Visitor.of(keeper);
    }

    private Entry entry(PointFacts point, double uvi, Instant takenAt) {
        VisitPlace place = new VisitPlace(visit, point.enclosureId(), point.id());
        return new Entry(UUID.randomUUID(), place, meter.id(), uvi, takenAt);
    }
}
