package dapple.practice;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.meter.Withdrawal;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class PracticeStorageTest {
    private static final Instant FIRST = Instant.parse("2026-03-02T09:00:00Z");

    @Autowired
    private TestCollection collection;

    @Autowired
    private PracticeLogging logging;

    @Autowired
    private PracticeRecord record;

    @Autowired
    private MeterDoubts doubts;

    @Autowired
    private MeterStandings standings;

    @Autowired
    private Meters meters;

    private SiteFacts site;
    private SignedIn keeper;
    private MeterFacts meter;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.SUPERVISOR);
        meter = collection.meter(site);
    }

    /** Named on day 0, good on day 7, dropped on day 9; a dark zero on day 10 does not answer for a meter with a lamp. */
    @Test
    void aDoubtIsToldFromAllThatIsOnRecord() {
        name("L90", 2.0, 0);
        checkByLamp(2.05, 7);
        drop(9);
        logging.checkDarkZero(entered(), new Shown(0, day(10), ""));
        assertThat(doubts.at(site.id()).of(meter.id(), day(8)))
                .contains(new Doubt(day(9), Optional.of(day(7)), Optional.empty(), false));
    }

    @Test
    void aCheckByTheLampAfterTheDropClearsIt() {
        name("L90", 2.0, 0);
        drop(9);
        checkByLamp(1.95, 10);
        assertThat(doubts.at(site.id()).of(meter.id(), day(8))).isEmpty();
    }

    @Test
    void aCalibrationIsWhereADoubtBegins() {
        NewCalibration calibration = new NewCalibration(day(3), 1, LocalDate.of(2027, 3, 1), "C-1");
        meters.calibrate(site.id(), meter.id(), calibration, keeper.personId());
        drop(9);
        assertThat(doubts.at(site.id()).of(meter.id(), day(2))).isEmpty();
    }

    @Test
    void anotherSiteSeesNothingOfIt() {
        drop(9);
        assertThat(doubts.at(collection.site().id()).byMeter()).isEmpty();
    }

    @Test
    void whatIsSentTwiceIsStoredOnce() {
        Entered once = entered();
        logging.happened(once, MeterEventKind.DROPPED, day(9), "");
        logging.happened(once, MeterEventKind.DROPPED, day(9), "");
        assertThat(record.events(site.id(), meter.id())).hasSize(1);
    }

    @Test
    void ofTwoLampsNamedInTheSameMomentOneStands() {
        Together.run(() -> name("L90", 2.0, 0), () -> name("L91", 3.0, 0));
        assertThat(standings.at(site.id(), site.timeZone()).lamps()).containsOnlyKeys(meter.id());
    }

    @Test
    void theNewestEventSaysWhetherAMeterIsAtHand() {
        logging.happened(entered(), MeterEventKind.LOST, day(3), "");
        logging.happened(entered(), MeterEventKind.FOUND, day(4), "");
        drop(5);
        assertThat(standings.at(site.id(), site.timeZone()).isAway(meter)).isFalse();
    }

    @Test
    void theEventBeforeAWithdrawnOneSaysWhereAMeterIs() {
        logging.happened(entered(), MeterEventKind.LOST, day(3), "");
        logging.happened(entered(), MeterEventKind.FOUND, day(4), "");
        withdrawNewest("first");
        assertThat(standings.at(site.id(), site.timeZone()).isAway(meter)).isTrue();
    }

    @Test
    void aWithdrawnDropLeavesNothingInDoubt() {
        drop(9);
        withdrawNewest("first");
        assertThat(doubts.at(site.id()).of(meter.id(), day(8))).isEmpty();
    }

    @Test
    void ofTwoWhoWithdrawInTheSameMomentOneDoes() {
        drop(9);
        MeterEventFacts event = record.events(site.id(), meter.id()).get(0);
        assertThat(Together.run(() -> withdraw(event, "first"), () -> withdraw(event, "second")))
                .singleElement()
                .isInstanceOf(ConflictException.class);
    }

    private void withdrawNewest(String reason) {
        withdraw(record.events(site.id(), meter.id()).get(0), reason);
    }

    private void withdraw(MeterEventFacts event, String reason) {
        logging.withdraw(site.id(), event, new Withdrawal(day(10), keeper.personId(), reason));
    }

    private void drop(int day) {
        logging.happened(entered(), MeterEventKind.DROPPED, day(day), "");
    }

    private void name(String lamp, double amount, int day) {
        logging.nameLamp(entered(), new NewReferenceLamp(lamp, "holder", amount, day(day)));
    }

    private void checkByLamp(double amount, int day) {
        logging.checkByLamp(entered(), new Shown(amount, day(day), ""));
    }

    private Entered entered() {
        return new Entered(
                site.id(), meter.id(), keeper.personId(), Instant.parse("2026-05-01T09:00:00Z"), UUID.randomUUID());
    }

    private static Instant day(int day) {
        return FIRST.plus(Duration.ofDays(day));
    }
}
