package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.judging.State;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

@StorageTest
class WithdrawingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Readings readings;

    @Autowired
    private ReadingWithdrawing withdrawing;

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
        home = collection.home(
                site, keeper, collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
    }

    @Test
    void whatStoodBeforeStandsAgain() {
        log(4.5);
        withdraw(log(1.7));
        assertThat(newest().flatMap(ReadingView::state)).contains(State.ON_TARGET);
    }

    @Test
    void theRunOfAStateBeginsAgainWhereItBegan() {
        Instant first = clock.instant();
        log(1.7, first);
        long between = log(4.5);
        log(1.6);
        withdraw(between);
        assertThat(newest().flatMap(ReadingView::stateSince)).contains(first);
    }

    @Test
    void nothingStandsWhereNothingStoodBefore() {
        withdraw(log(1.7));
        assertThat(newest()).isEmpty();
    }

    @Test
    void theReadingStaysOnRecord() {
        long reading = log(1.7);
        withdraw(reading);
        assertThat(database.queryForObject("select amount from reading where id = ?", Double.class, reading))
                .isEqualTo(1.7);
        assertThat(readings.recorded(site.id(), reading).withdrawal().map(RecordedReading.Withdrawal::reason))
                .contains("wrong enclosure");
    }

    @Test
    void sentTwiceItIsWithdrawnOnce() {
        long reading = log(1.7);
        withdraw(reading);
        withdraw(reading);
        assertThat(withdrawals(reading)).isEqualTo(1);
    }

    @Test
    void sentTwiceAtOnceItIsWithdrawnOnce() {
        long reading = log(1.7);
        assertThat(Together.run(() -> withdraw(reading), () -> withdraw(reading)))
                .isEmpty();
        assertThat(withdrawals(reading)).isEqualTo(1);
    }

    @Test
    void correctedAndWithdrawnAtOnceOneOfTheTwoHolds() {
        long reading = log(1.7);
        List<Throwable> thrown = Together.run(() -> withdraw(reading), () -> correct(reading));
        assertThat(thrown).hasSize(1).hasOnlyElementsOfType(ConflictException.class);
    }

    @Test
    void whatIsWithdrawnIsNotCorrected() {
        long reading = log(1.7);
        withdraw(reading);
        assertThatThrownBy(() -> correct(reading)).isInstanceOf(ConflictException.class);
    }

    @Test
    void whatIsCorrectedIsNotWithdrawn() {
        long reading = log(1.7);
        correct(reading);
        assertThatThrownBy(() -> withdraw(reading)).isInstanceOf(ConflictException.class);
    }

    @Test
    void theCorrectionIsWithdrawnInstead() {
        log(4.5);
        long corrected = correct(log(1.7));
        withdraw(corrected);
        assertThat(newest().flatMap(ReadingView::state)).contains(State.ON_TARGET);
    }

    @Test
    void anotherKeeperMayNeitherWithdrawNorCorrect() {
        long reading = log(1.7);
        keeper = collection.person(site, Role.KEEPER);
        assertThatThrownBy(() -> withdraw(reading)).isInstanceOf(ConflictException.class);
        assertThatThrownBy(() -> correct(reading)).isInstanceOf(ConflictException.class);
    }

    @Test
    void aSupervisorMay() {
        long reading = log(1.7);
        keeper = collection.person(site, Role.SUPERVISOR);
        withdraw(reading);
        assertThat(withdrawals(reading)).isEqualTo(1);
    }

    @Test
    void whoTookAReadingMayStillWithdrawItsCorrectionByASupervisor() {
        SignedIn reader = keeper;
        long reading = log(1.7);
        keeper = collection.person(site, Role.SUPERVISOR);
        long corrected = correct(reading);
        keeper = reader;
        withdraw(corrected);
        assertThat(withdrawals(corrected)).isEqualTo(1);
    }

    @Test
    void aReadingOfAnotherSiteIsNotFound() {
        long reading = log(1.7);
        keeper = collection.person(collection.site(), Role.SUPERVISOR);
        assertThatThrownBy(() -> withdraw(reading)).isInstanceOf(NotFoundException.class);
    }

    private void withdraw(long reading) {
        withdrawing.withdraw(Visitor.of(keeper), reading, "wrong enclosure");
    }

    private long correct(long reading) {
        return logging.correct(Visitor.of(keeper), reading, new Correction(UUID.randomUUID(), 2.0, "mistyped"));
    }

    private Integer withdrawals(long reading) {
        String count = "select count(*) from reading_withdrawal where reading_id = ?";
        Integer found = database.queryForObject(count, Integer.class, reading);
        return found == null ? 0 : found;
    }

    private Optional<ReadingView> newest() {
        return readings
                .latestIn(site.id(), home.enclosureId(), List.of(home.basking()))
                .getOrDefault(home.basking().id(), List.of())
                .stream()
                .findFirst();
    }

    private long log(double uvi) {
        return log(uvi, clock.instant());
    }

    private long log(double uvi, Instant at) {
        VisitPlace place =
                new VisitPlace(visit, home.enclosureId(), home.basking().id());
        return logging.log(Visitor.of(keeper), new Entry(UUID.randomUUID(), place, meter.id(), uvi, at));
    }
}
