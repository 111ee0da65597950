package dapple.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.enclosure.Enclosures;
import dapple.enclosure.Facing;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.Outcome;
import dapple.reading.ReadingLogging;
import dapple.reading.ReadingWithdrawing;
import dapple.reading.Unread;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.NotFoundException;
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

@StorageTest
class RoundsStorageTest {
    private static final int WEEK = 7;

    @Autowired
    private TestCollection collection;

    @Autowired
    private RoundArranging arranging;

    @Autowired
    private Rounds rounds;

    @Autowired
    private WalkKeeping keeping;

    @Autowired
    private Coverages coverages;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private ReadingWithdrawing withdrawing;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private MeterFacts meter;
    private PointFacts first;
    private PointFacts second;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        meter = collection.meter(site);
        first = collection.point(site, collection.emptyEnclosure(site), "P1", PointRole.BASKING);
        second = collection.point(site, collection.emptyEnclosure(site), "P1", PointRole.BASKING);
    }

    @Test
    void aWalkIsDueWithoutAnybodySayingSo() {
        PlanNow now = planned(today());
        assertThat(walk(now).state()).isEqualTo(WalkState.DUE);
        assertThat(walk(now).all()).isEqualTo(2);
        assertThat(now.next()).contains(today().plusDays(WEEK));
    }

    @Test
    void stopsComeInTheOrderOfTheRound() {
        PlanNow now = planned(today(), second, first);
        assertThat(walk(now).stops())
                .extracting(Stop::enclosureId)
                .containsExactly(second.enclosureId(), first.enclosureId());
    }

    @Test
    void whatIsReadIsDone() {
        PlanNow now = planned(today());
        read(first, clock.instant());
        WalkFacts walk = walk(again(now));
        assertThat(walk.state()).isEqualTo(WalkState.UNDER_WAY);
        assertThat(walk.doneSteps()).extracting(RoundStep::pointId).containsExactly(first.id());
        assertThat(walk.next().map(Stop::enclosureId)).contains(second.enclosureId());
    }

    @Test
    void aReasonIsAsGoodAsAReading() {
        PlanNow now = planned(today());
        read(first, clock.instant());
        note(second, Outcome.LAMP_OUT);
        assertThat(walk(again(now)).state()).isEqualTo(WalkState.DONE);
        assertThat(rounds.walk(keeper, now.plan().id(), today()).stops().get(1).steps())
                .extracting(RoundStep::outcome)
                .containsExactly(Optional.of(Outcome.LAMP_OUT));
    }

    @Test
    void whatTwoPeopleReadIsOneWalk() {
        PlanNow now = planned(today());
        read(first, clock.instant());
        keeper = collection.person(site, Role.KEEPER);
        read(second, clock.instant());
        assertThat(walk(again(now)).state()).isEqualTo(WalkState.DONE);
    }

    @Test
    void whatWasReadBeforeDoesNotCount() {
        read(first, startOfToday().minusSeconds(1));
        assertThat(walk(planned(today())).done()).isZero();
    }

    @Test
    void aWithdrawnReadingDoesNotCount() {
        PlanNow now = planned(today());
        long reading = read(first, clock.instant());
        withdrawing.withdraw(new Visitor(site.id(), keeper.personId()), reading, "wrong enclosure");
        assertThat(walk(again(now)).done()).isZero();
        assertThat(rounds.walk(keeper, now.plan().id(), today()).done()).isZero();
    }

    @Test
    void aReadingHeldOtherwiseDoesNotCount() {
        PlanNow now = planned(today());
        VisitPlace place = new VisitPlace(UUID.randomUUID(), first.enclosureId(), first.id());
        logging.log(
                new Visitor(site.id(), keeper.personId()),
                new Entry(UUID.randomUUID(), place, meter.id(), 2.0, clock.instant(), Optional.of(Facing.LEVEL)));
        assertThat(walk(again(now)).done()).isZero();
        assertThat(rounds.walk(keeper, now.plan().id(), today()).done()).isZero();
    }

    @Test
    void aWalkOfADayThatHasPassedIsOverdue() {
        PlanNow now = planned(today().minusDays(1));
        assertThat(walk(now).state()).isEqualTo(WalkState.OVERDUE);
        assertThat(now.isOverdue()).isTrue();
    }

    @Test
    void anOlderWalkIsMissedNotOverdue() {
        PlanNow now = planned(today().minusDays(WEEK));
        WalkFacts older = rounds.walk(keeper, now.plan().id(), today().minusDays(WEEK));
        assertThat(older.state()).isEqualTo(WalkState.MISSED);
        assertThat(walk(now).state()).isEqualTo(WalkState.DUE);
    }

    @Test
    void anOlderWalkIsDoneByWhatWasReadInItsTime() {
        PlanNow now = planned(today().minusDays(WEEK));
        read(first, startOfToday().minus(Duration.ofDays(3)));
        read(second, startOfToday().minusSeconds(1));
        assertThat(rounds.walk(keeper, now.plan().id(), today().minusDays(WEEK)).state())
                .isEqualTo(WalkState.DONE);
        assertThat(walk(again(now)).done()).isZero();
    }

    @Test
    void whatIsReadFromABeginningBeforeItsDayOnCounts() {
        PlanNow now = planned(today().plusDays(1));
        assertThat(now.walk()).isEmpty();
        keeping.begin(keeper, now.plan().id(), today().plusDays(1));
        read(first, clock.instant());
        WalkFacts walk = walk(again(now));
        assertThat(walk.dueOn()).isEqualTo(today().plusDays(1));
        assertThat(walk.done()).isEqualTo(1);
        assertThat(walk.state()).isEqualTo(WalkState.UNDER_WAY);
    }

    @Test
    void anExcusedWalkIsNeitherDoneNorOverdue() {
        LocalDate yesterday = today().minusDays(1);
        PlanNow now = planned(yesterday);
        keeping.excuse(keeper, new WalkKey(now.plan().id(), yesterday), 0, new NotWalked(Excuse.Reason.NO_METER, ""));
        assertThat(walk(again(now)).state()).isEqualTo(WalkState.NOT_WALKED);
        assertThat(again(now).isOverdue()).isFalse();
    }

    @Test
    void anEnclosureThatIsOffDropsOutOfTheWalk() {
        PlanNow now = planned(today());
        read(first, clock.instant());
        Instant ago = clock.instant().minus(Duration.ofHours(1));
        enclosures.planOff(
                site.id(),
                new PlannedOffTime(second.enclosureId(), ago, Optional.empty(), "winter rest"),
                keeper.personId());
        WalkFacts walk = walk(again(now));
        assertThat(walk.state()).isEqualTo(WalkState.DONE);
        assertThat(walk.stops().get(1).spared()).contains(Stop.Spared.PLANNED_OFF);
    }

    @Test
    void anEnclosureWithoutPointsDropsOutOfTheWalk() {
        long bare = collection.emptyEnclosure(site);
        long plan = plan(today(), List.of(bare));
        assertThat(walk(rounds.of(keeper, plan)).state()).isEqualTo(WalkState.NOTHING_TO_READ);
    }

    @Test
    void everyQuantityThatCanBeMeasuredIsAStep() {
        collection.meter(site, Quantity.ILLUMINANCE);
        PointFacts both = collection.point(
                site,
                collection.emptyEnclosure(site),
                "P1",
                PointRole.BASKING,
                List.of(Quantity.UV_INDEX, Quantity.ILLUMINANCE, Quantity.SURFACE_TEMPERATURE));
        WalkFacts walk = walk(rounds.of(keeper, plan(today(), List.of(both.enclosureId()))));
        assertThat(walk.stops().get(0).steps())
                .extracting(RoundStep::quantity)
                .containsExactly(Quantity.UV_INDEX, Quantity.ILLUMINANCE);
    }

    @Test
    void aWalkGivenOnNamesWhoHasItNow() {
        PlanNow now = planned(today());
        SignedIn other = collection.person(site, Role.KEEPER);
        WalkKey key = new WalkKey(now.plan().id(), today());
        keeping.give(keeper, key, 0, new GivenTo.Person(other.personId()));
        assertThat(again(now).name()).contains(other.fullName());
        keeping.give(keeper, key, 1, new GivenTo.Holders(Role.SUPERVISOR));
        assertThat(again(now).name()).isEmpty();
        assertThat(again(now).givenTo()).isEqualTo(new GivenTo.Holders(Role.SUPERVISOR));
    }

    @Test
    void aRoundThatHasEndedIsShownForAWhileOnly() {
        plan(
                "ended of late",
                new DueDays(new Cadence.Every(1), today().minusDays(9), Optional.of(today().minusDays(7))));
        plan(
                "ended long ago",
                new DueDays(new Cadence.Every(1), today().minusDays(9), Optional.of(today().minusDays(8))));
        assertThat(rounds.now(keeper)).extracting(now -> now.plan().title()).containsExactly("ended of late");
    }

    @Test
    void anotherSitesRoundIsNotFound() {
        long plan = planned(today()).plan().id();
        SignedIn stranger = collection.person(collection.site(), Role.KEEPER);
        assertThat(rounds.now(stranger)).isEmpty();
        assertThatThrownBy(() -> rounds.walk(stranger, plan, today())).isInstanceOf(NotFoundException.class);
    }

    @Test
    void aDayOnWhichItIsNotDueIsNotFound() {
        long plan = planned(today()).plan().id();
        assertThatThrownBy(() -> rounds.walk(keeper, plan, today().plusDays(1))).isInstanceOf(NotFoundException.class);
    }

    @Test
    void coverageCountsWhatWasDoneExcusedAndMissed() {
        LocalDate begin = today().minusDays(3L * WEEK);
        PlanNow now = planned(begin);
        read(first, begin.atStartOfDay(keeper.zone()).toInstant());
        read(second, begin.atStartOfDay(keeper.zone()).toInstant());
        keeping.excuse(
                keeper,
                new WalkKey(now.plan().id(), begin.plusDays(WEEK)),
                0,
                new NotWalked(Excuse.Reason.NO_STAFF, ""));
        Coverage coverage = coverages.of(keeper, now.plan().id());
        assertThat(coverage.walks())
                .extracting(WalkFacts::state)
                .containsExactly(WalkState.DUE, WalkState.MISSED, WalkState.NOT_WALKED, WalkState.DONE);
        assertThat(coverage.due()).isEqualTo(3);
    }

    @Test
    void aPointThatIsReadForTheFirstTimeLaterDoesNotCountBefore() {
        PlanNow now = planned(today().minusDays(WEEK));
        read(first, startOfToday().minus(Duration.ofDays(3)));
        assertThat(rounds.walk(keeper, now.plan().id(), today().minusDays(WEEK)).state())
                .isEqualTo(WalkState.DONE);
        read(second, startOfToday());
        assertThat(rounds.walk(keeper, now.plan().id(), today().minusDays(WEEK)).state())
                .isEqualTo(WalkState.DONE);
    }

    private PlanNow planned(LocalDate firstDay) {
        return planned(firstDay, first, second);
    }

    /** Due once a week from a day on. */
    private PlanNow planned(LocalDate firstDay, PointFacts... points) {
        List<Long> stops = List.of(points).stream().map(PointFacts::enclosureId).toList();
        return rounds.of(keeper, plan(firstDay, stops));
    }

    private long plan(LocalDate firstDay, List<Long> stops) {
        DueDays days = new DueDays(new Cadence.Every(WEEK), firstDay, Optional.empty());
        GivenTo.Holders keepers = new GivenTo.Holders(Role.KEEPER);
        return arranging.add(site.id(), new PlanDetails("Round of " + firstDay, days, keepers, stops));
    }

    private void plan(String title, DueDays days) {
        arranging.add(
                site.id(),
                new PlanDetails(title, days, new GivenTo.Holders(Role.KEEPER), List.of(first.enclosureId())));
    }

    private PlanNow again(PlanNow before) {
        return rounds.of(keeper, before.plan().id());
    }

    private static WalkFacts walk(PlanNow now) {
        return now.walk().orElseThrow();
    }

    private long read(PointFacts point, Instant at) {
        VisitPlace place = new VisitPlace(UUID.randomUUID(), point.enclosureId(), point.id());
        Entry entry = new Entry(UUID.randomUUID(), place, meter.id(), 2.0, at);
        return logging.log(new Visitor(site.id(), keeper.personId()), entry);
    }

    private void note(PointFacts point, Outcome outcome) {
        VisitPlace place = new VisitPlace(UUID.randomUUID(), point.enclosureId(), point.id());
        logging.note(
                new Visitor(site.id(), keeper.personId()),
                new Unread(UUID.randomUUID(), place, outcome, clock.instant()));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), keeper.zone());
    }

    private Instant startOfToday() {
        return today().atStartOfDay(keeper.zone()).toInstant();
    }
}
