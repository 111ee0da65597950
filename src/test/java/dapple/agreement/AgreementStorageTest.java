package dapple.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.light.judging.PointRole;
import dapple.light.metrology.Compared;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.practice.MeterNotice;
import dapple.practice.MeterStandings;
import dapple.reading.Correction;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.ReadingWithdrawing;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.rig.FirstRig;
import dapple.rig.LampStep;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.rig.Rigs;
import dapple.site.ConflictException;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
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

/** What is gathered to compare meters by, and how what is found is kept. */
@StorageTest
class AgreementStorageTest {
    private static final double ROUNDING = 1e-9;

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private ReadingWithdrawing withdrawing;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private Meters meters;

    @Autowired
    private Gathering gathering;

    @Autowired
    private Tellings tellings;

    @Autowired
    private MeterFindings findings;

    @Autowired
    private MeterStandings standings;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn supervisor;
    private MeterFacts meter;
    private PointFacts point;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        meter = collection.meter(site);
        point = collection.point(site, collection.emptyEnclosure(site), "P1", PointRole.BASKING);
    }

    @Test
    void aReadingIsComparedByItsLogarithm() {
        read(3.0, 10);
        assertThat(gathered()).singleElement().satisfies(one -> {
            assertThat(one.lnAmount()).isCloseTo(Math.log(3.0), within(ROUNDING));
            assertThat(one.meter()).isEqualTo(meter.id() + "/-");
        });
    }

    @Test
    void aWithdrawnReadingIsLeftOut() {
        withdrawing.withdraw(Visitor.of(supervisor), read(3.0, 10), "wrong lamp");
        assertThat(gathered()).isEmpty();
    }

    @Test
    void aCorrectedReadingCountsAsCorrected() {
        logging.correct(Visitor.of(supervisor), read(30.0, 10), new Correction(UUID.randomUUID(), 3.0, "a slip"));
        assertThat(gathered())
                .singleElement()
                .satisfies(one -> assertThat(one.lnAmount()).isCloseTo(Math.log(3.0), within(ROUNDING)));
    }

    /** Five steps of 0.1 are the least. */
    @Test
    void aReadingOfFewStepsOfTheDisplayIsLeftOut() {
        read(0.4, 10);
        read(0.5, 9);
        assertThat(gathered()).hasSize(1);
    }

    @Test
    void whatIsOlderThanEighteenMonthsIsLeftOut() {
        read(3.0, 560);
        read(3.0, 530);
        assertThat(gathered()).hasSize(1);
    }

    @Test
    void anotherSiteHasItsOwn() {
        read(3.0, 10);
        assertThat(gathering.of(collection.site(), clock.instant()).readings()).isEmpty();
    }

    @Test
    void aCalibrationMakesAnotherMeterOfItAndCorrectsItsReadings() {
        read(3.0, 20);
        read(3.0, 10);
        calibrate(1.1, 15);
        List<Compared> found = gathered();
        assertThat(found).extracting(Compared::meter).doesNotHaveDuplicates();
        assertThat(found.get(1).lnAmount()).isCloseTo(Math.log(3.3), within(ROUNDING));
    }

    @Test
    void anotherLampMakesAnotherSet() {
        long first = collection
                .lamp(site, collection.lampModel(site, LampClass.TUBE_T5))
                .id();
        long second = collection
                .lamp(site, collection.lampModel(site, LampClass.TUBE_T5))
                .id();
        changing.setUpFirst(
                at(40),
                new FirstRig(List.of(new LampStep.Fit(first, RigExamples.hanging("tube"))), List.of(), List.of()));
        read(3.0, 20);
        read(3.0, 18);
        long fitting = rigs.at(site.id(), point.enclosureId(), clock.instant())
                .fittings()
                .get(0)
                .id();
        changing.make(at(15), new LampStep.Swap(fitting, second, Optional.empty()));
        read(3.0, 10);
        assertThat(gathered()).extracting(one -> one.lamps().key()).satisfies(keys -> {
            assertThat(keys.get(1)).isEqualTo(keys.get(0));
            assertThat(keys.get(2)).isNotEqualTo(keys.get(0));
        });
    }

    @Test
    void whatIsToldAgainIsStoredOnce() {
        tellings.knocked(site, meter, -0.10);
        tellings.knocked(site, meter, -0.12);
        assertThat(findings.all(site.id()))
                .singleElement()
                .satisfies(one -> assertThat(one.lnChange()).isEqualTo(-0.12));
    }

    @Test
    void whatIsNotBorneOutIsTakenBackAndStaysOnRecord() {
        tellings.knocked(site, meter, -0.10);
        tellings.nothing(site, meter);
        assertThat(findings.open(site.id())).isEmpty();
        assertThat(findings.all(site.id()))
                .singleElement()
                .satisfies(one -> assertThat(one.takenBackAt()).isPresent());
    }

    /** The readings before it no longer count, so that nothing could be found. */
    @Test
    void whatLiesAtTheBeginningOfTheReadingsIsNotTakenBack() {
        tellings.knockedSince(site, meter, -0.10, Duration.ofDays(500));
        tellings.nothing(site, meter);
        assertThat(findings.open(site.id())).hasSize(1);
    }

    @Test
    void whatSomebodyHasSettledIsNotToldAgain() {
        tellings.knocked(site, meter, -0.10);
        settle();
        tellings.knocked(site, meter, -0.10);
        assertThat(findings.open(site.id())).isEmpty();
    }

    @Test
    void aFindingIsSettledOnce() {
        tellings.knocked(site, meter, -0.10);
        long id = findings.open(site.id()).get(0).id();
        settle();
        assertThatThrownBy(() -> findings.settle(site.id(), id, supervisor.personId(), "again"))
                .isInstanceOf(ConflictException.class);
    }

    @Test
    void aCalibrationSettlesIt() {
        tellings.knocked(site, meter, -0.10);
        calibrate(1.1, 1);
        assertThat(findings.all(site.id())).singleElement().satisfies(one -> {
            assertThat(one.isOpen()).isFalse();
            assertThat(one.settlement().orElseThrow().by()).isEmpty();
        });
    }

    @Test
    void whoReadsWithItIsToldByHowMuchItSeemsToBeOff() {
        tellings.knocked(site, meter, Math.log(0.9));
        assertThat(standings.at(site.id(), site.timeZone()).notices(meter))
                .filteredOn(notice -> notice.kind() == MeterNotice.Kind.READS_LOW)
                .singleElement()
                .satisfies(notice -> assertThat(notice.percent()).contains(10));
    }

    private void settle() {
        findings.settle(
                site.id(), findings.open(site.id()).get(0).id(), supervisor.personId(), "all lamps were cleaned");
    }

    private List<Compared> gathered() {
        return gathering.of(site, clock.instant()).readings().getOrDefault(Quantity.UV_INDEX, List.of());
    }

    private long read(double amount, int daysAgo) {
        VisitPlace place = new VisitPlace(UUID.randomUUID(), point.enclosureId(), point.id());
        return logging.log(
                Visitor.of(supervisor), new Entry(UUID.randomUUID(), place, meter.id(), amount, daysAgo(daysAgo)));
    }

    private void calibrate(double factor, int daysAgo) {
        NewCalibration calibration = new NewCalibration(daysAgo(daysAgo), factor, LocalDate.of(2099, 1, 1), "C-1");
        meters.calibrate(site.id(), meter.id(), calibration, supervisor.personId());
    }

    private RigEntry at(int daysAgo) {
        return new RigEntry(
                site.id(),
                point.enclosureId(),
                daysAgo(daysAgo),
                "",
                supervisor.personId(),
                UUID.randomUUID(),
                Optional.empty());
    }

    private Instant daysAgo(int days) {
        return clock.instant().minus(Duration.ofDays(days));
    }
}
