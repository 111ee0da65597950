package dapple.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.TakenException;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.orm.ObjectOptimisticLockingFailureException;

@StorageTest
class MetersStorageTest {
    private static final Instant MARCH = Instant.parse("2026-03-01T00:00:00Z");
    private static final Instant JUNE = Instant.parse("2026-06-01T00:00:00Z");
    private static final Instant JULY = Instant.parse("2026-07-01T00:00:00Z");
    private static final LocalDate DUE = LocalDate.parse("2027-03-01");

    @Autowired
    private TestCollection collection;

    @Autowired
    private MeterRegister register;

    @Autowired
    private Meters meters;

    @Autowired
    private Calibrations calibrations;

    @Autowired
    private JdbcClient database;

    @Autowired
    private Told told;

    private SiteFacts site;
    private SignedIn lead;
    private long meterId;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        meterId = register.add(site.id(), Quantity.UV_INDEX, meter("M1"));
        told.heard.clear();
    }

    @Test
    void keepsAllThatIsSaidOfAMeter() {
        MeterChange all = new MeterChange(
                "M9",
                "thermopile",
                0.5,
                Optional.of(new MeterRange(-40, 2000)),
                Optional.of(new StatedUncertainty(0.05, "certificate C-1")),
                Optional.of(new Loan("the university", Optional.of(DUE))),
                "two\nlines");
        long id = register.add(site.id(), Quantity.IRRADIANCE, all);
        assertThat(register.get(site.id(), id).state()).isEqualTo(all);
    }

    @Test
    void readingsTakeTheStatedUncertainty() {
        StatedUncertainty stated = new StatedUncertainty(0.05, "certificate C-1");
        MeterChange sure =
                new MeterChange("M1", "meter", 0.1, Optional.empty(), Optional.of(stated), Optional.empty(), "");
        register.change(site.id(), meterId, 0, sure);
        assertThat(meters.get(site.id(), meterId).uncertainty().share()).isEqualTo(0.05);
    }

    @Test
    void ofTwoWhoEnterOneCodeAtOnceOneIsRefused() {
        Runnable entering = () -> register.add(site.id(), Quantity.UV_INDEX, meter("M2"));
        List<Throwable> thrown = Together.run(entering, entering);
        assertThat(thrown).singleElement().isInstanceOf(TakenException.class);
        assertThat(register.all(site.id())).hasSize(2);
    }

    @Test
    void codesAreComparedWithoutCaseAndStayTakenOutOfUse() {
        register.retire(site.id(), meterId);
        assertThatThrownBy(() -> register.add(site.id(), Quantity.UVA, meter("m1")))
                .isInstanceOf(TakenException.class);
    }

    @Test
    void theSecondOfTwoChangesIsRefused() {
        register.change(site.id(), meterId, 0, meter("M2"));
        assertThatThrownBy(() -> register.change(site.id(), meterId, 0, meter("M3")))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void aCalibrationDoesNotMakeAFormStale() {
        calibrate(MARCH, 1.04);
        register.change(site.id(), meterId, 0, meter("M2"));
        assertThat(register.get(site.id(), meterId).facts().code()).isEqualTo("M2");
    }

    @Test
    void anotherSitesMeterIsNotFound() {
        long other = collection.site().id();
        assertThatThrownBy(() -> register.get(other, meterId)).isInstanceOf(NotFoundException.class);
        assertThatThrownBy(() -> calibrations.enter(other, meterId, calibration(MARCH, 1), lead.personId()))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void theNewestCalibrationSaysWhenTheNextIsDue() {
        calibrate(JUNE, 1.04);
        NewCalibration late = new NewCalibration(MARCH, 1, LocalDate.parse("2030-01-01"), "entered late");
        calibrations.enter(site.id(), meterId, late, lead.personId());
        assertThat(meters.get(site.id(), meterId).calibrationDue()).contains(DUE);
    }

    @Test
    void aMeterIsCorrectedByTheCalibrationOfItsTime() {
        calibrate(MARCH, 1.04);
        calibrate(JUNE, 0.97);
        assertThat(factor(MARCH.plusSeconds(1))).contains(1.04);
        assertThat(factor(JULY)).contains(0.97);
        assertThat(factor(MARCH.minusSeconds(1))).isEmpty();
    }

    @Test
    void aWithdrawnCalibrationHoldsNoLongerAndStaysOnRecord() {
        calibrate(MARCH, 1.04);
        calibrate(JUNE, 0.5);
        withdrawNewest();
        assertThat(factor(JULY)).contains(1.04);
        assertThat(calibrations.of(site.id(), meterId))
                .extracting(one -> one.withdrawal().map(Withdrawal::reason))
                .containsExactly(Optional.of("of another meter"), Optional.empty());
    }

    @Test
    void theOnlyCalibrationWithdrawnLeavesNone() {
        calibrate(MARCH, 1.04);
        withdrawNewest();
        assertThat(meters.get(site.id(), meterId).calibrationDue()).isEmpty();
    }

    @Test
    void aNewOneOfTheSameDayTakesThePlaceOfAWithdrawnOne() {
        calibrate(JUNE, 0.5);
        withdrawNewest();
        calibrate(JUNE, 0.97);
        assertThat(factor(JULY)).contains(0.97);
        assertThat(calibrations.of(site.id(), meterId)).hasSize(2);
    }

    @Test
    void ofTwoWhoEnterACalibrationOfOneDayAtOnceOneIsRefused() {
        Runnable entering = () -> calibrate(JUNE, 1.04);
        assertThat(Together.run(entering, entering)).singleElement().isInstanceOf(TakenException.class);
        assertThat(calibrations.of(site.id(), meterId)).hasSize(1);
    }

    @Test
    void ofTwoWhoWithdrawAtOnceOneIsRefused() {
        calibrate(JUNE, 0.5);
        long id = calibrations.of(site.id(), meterId).get(0).id();
        Runnable withdrawing = () -> calibrations.withdraw(
                site.id(), meterId, id, new Calibrations.Reason(lead.personId(), "of another meter"));
        assertThat(Together.run(withdrawing, withdrawing)).singleElement().isInstanceOf(ConflictException.class);
    }

    @Test
    void whoJudgesIsToldSinceWhenACalibrationHoldsOrNoLongerHolds() {
        calibrate(MARCH, 1.04);
        withdrawNewest();
        CalibrationRecorded expected = new CalibrationRecorded(site.id(), meterId, MARCH);
        assertThat(told.heard).containsExactly(expected, expected);
    }

    @Test
    void aCalibrationIsNotFoundAtAnotherMeter() {
        calibrate(MARCH, 1.04);
        long id = calibrations.of(site.id(), meterId).get(0).id();
        long other = register.add(site.id(), Quantity.UV_INDEX, meter("M2"));
        assertThatThrownBy(() -> calibrations.get(site.id(), other, id)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void historyKeepsWhatWasSaidBefore() {
        register.change(site.id(), meterId, 0, meter("M2"));
        assertThat(database.sql("select code from meter_history where id = ? order by revision_id")
                        .param(meterId)
                        .query(String.class)
                        .list())
                .containsExactly("M1", "M2");
    }

    @Test
    void aRetiredMeterIsOfferedNoMore() {
        register.retire(site.id(), meterId);
        assertThat(meters.inUse(site.id())).isEmpty();
        register.returnToUse(site.id(), meterId);
        assertThat(meters.inUse(site.id())).hasSize(1);
    }

    private void calibrate(Instant from, double factor) {
        calibrations.enter(site.id(), meterId, calibration(from, factor), lead.personId());
    }

    private void withdrawNewest() {
        long id = calibrations.of(site.id(), meterId).get(0).id();
        calibrations.withdraw(site.id(), meterId, id, new Calibrations.Reason(lead.personId(), "of another meter"));
    }

    private Optional<Double> factor(Instant at) {
        return meters.calibrationAt(meterId, at).map(inForce -> inForce.factorAt(1));
    }

    private static NewCalibration calibration(Instant from, double factor) {
        return new NewCalibration(from, factor, DUE, "C-1");
    }

    private static MeterChange meter(String code) {
        return MeterChange.of(code, "UV index meter", 0.1);
    }

    /** Hears what calibrations tell. */
    @TestComponent
    static class Told {
        final List<CalibrationRecorded> heard = new CopyOnWriteArrayList<>();

        @EventListener
        void hear(CalibrationRecorded event) {
            heard.add(event);
        }
    }
}
