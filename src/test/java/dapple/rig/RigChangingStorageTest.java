package dapple.rig;

import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.hanging;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.enclosure.Enclosures;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampLeavesUse;
import dapple.lamp.StillFittedException;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.RigRefusedException.Reason;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

@StorageTest
@RecordApplicationEvents
class RigChangingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private Circuits circuits;

    @Autowired
    private ApplicationEventPublisher publisher;

    @Autowired
    private ApplicationEvents events;

    @Autowired
    private JdbcClient database;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private long roomId;
    private long enclosureId;
    private LampFacts lamp;
    private Instant now;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        roomId = enclosures.addRoom(site.id(), "Dry room", 1);
        enclosureId = enclosure("E1");
        lamp = lamp();
        now = clock.instant();
    }

    @Test
    void aFittedLampHangs() {
        fit(lamp, enclosureId, daysAgo(3));
        assertThat(rig(now).fittings())
                .singleElement()
                .satisfies(fitting -> assertThat(fitting.lamp().id()).isEqualTo(lamp.id()))
                .satisfies(fitting -> assertThat(fitting.hanging()).isEqualTo(hanging("basking tube")));
    }

    @Test
    void thePastRigCanBeAskedForAgain() {
        fit(lamp, enclosureId, daysAgo(3));
        long fitting = rig(now).fittings().get(0).id();
        make(daysAgo(1), new LampStep.Move(fitting, "far end", Optional.of(above(0.2, 0.3, 0.8))));
        assertThat(rig(daysAgo(4)).fittings()).isEmpty();
        assertThat(rig(daysAgo(2)).fittings().get(0).hanging().place()).isEqualTo("basking tube");
        assertThat(rig(now).fittings().get(0).hanging().place()).isEqualTo("far end");
    }

    @Test
    void aPartKnowsTheChangesThatBeganAndEndedIt() {
        long began = fit(lamp, enclosureId, daysAgo(3));
        long ended =
                make(daysAgo(1), new LampStep.TakeOut(rig(now).fittings().get(0).id()));
        Span span = rig(daysAgo(2)).fittings().get(0).span();
        assertThat(span.begunBy()).isEqualTo(began);
        assertThat(span.endedBy()).contains(ended);
        assertThat(span.to()).contains(daysAgo(1));
        assertThat(span.endRecordedAt().orElseThrow()).isAfterOrEqualTo(now);
    }

    @Test
    void theNewestChangeNamesTheRig() {
        long first = fit(lamp, enclosureId, daysAgo(3));
        long second = fit(lamp(), enclosureId, daysAgo(1));
        assertThat(rig(daysAgo(4)).newest()).isEmpty();
        assertThat(rig(daysAgo(2)).newest().map(RigChangeFacts::id)).contains(first);
        assertThat(rig(now).newest().map(RigChangeFacts::id)).contains(second);
    }

    @Test
    void aLampHangsInOnePlace() {
        fit(lamp, enclosureId, daysAgo(3));
        refused(Reason.LAMP_HANGS, "E1", () -> fit(lamp, enclosure("E2"), daysAgo(1)));
    }

    @Test
    void aLampFittedTwiceAtOnceHangsOnce() {
        long other = enclosure("E2");
        List<Throwable> thrown =
                Together.run(() -> fit(lamp, enclosureId, daysAgo(1)), () -> fit(lamp, other, daysAgo(1)));
        assertThat(thrown).singleElement().isInstanceOf(RigRefusedException.class);
        assertThat(database.sql("select count(*) from fitting where lamp_id = ?")
                        .param(lamp.id())
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void twoWhoExchangeLampsDoNotWaitForEachOther() {
        long other = enclosure("E2");
        LampFacts second = lamp();
        fit(lamp, enclosureId, daysAgo(3));
        fit(second, other, daysAgo(3));
        long one = rig(now).fittings().get(0).id();
        long two = rigs.at(site.id(), other, now).fittings().get(0).id();
        List<Throwable> thrown = Together.run(
                () -> make(daysAgo(1), new LampStep.Swap(one, second.id())),
                () -> changing.make(entry(other, daysAgo(1)), new LampStep.Swap(two, lamp.id())));
        assertThat(thrown).isNotEmpty().allMatch(RigRefusedException.class::isInstance);
    }

    @Test
    void aLampThatHungElsewhereAtTheTimeIsRefused() {
        fit(lamp, enclosureId, daysAgo(5));
        make(daysAgo(2), new LampStep.TakeOut(rig(now).fittings().get(0).id()));
        refused(Reason.LAMP_HUNG, "E1", () -> fit(lamp, enclosure("E2"), daysAgo(3)));
    }

    @Test
    void aLampThatIsFittedLaterIsRefused() {
        fit(lamp, enclosureId, daysAgo(2));
        refused(Reason.LAMP_FITTED_LATER, "E1", () -> fit(lamp, enclosure("E2"), daysAgo(3)));
    }

    @Test
    void aLampHangsAgainFromTheInstantAtWhichItWasTakenOut() {
        fit(lamp, enclosureId, daysAgo(5));
        make(daysAgo(2), new LampStep.TakeOut(rig(now).fittings().get(0).id()));
        assertThat(fit(lamp, enclosure("E2"), daysAgo(2))).isPositive();
    }

    @Test
    void aRetiredLampCannotBeFitted() {
        database.sql("update lamp set retired_at = ?, retired_for = 'BROKEN' where id = ?")
                .params(Timestamp.from(now), lamp.id())
                .update();
        refused(Reason.LAMP_RETIRED, "", () -> fit(lamp, enclosureId, daysAgo(1)));
    }

    @Test
    void aFittedLampStaysInUse() {
        fit(lamp, enclosureId, daysAgo(1));
        LampLeavesUse leaving = new LampLeavesUse(site.id(), lamp.id(), now);
        assertThatThrownBy(() -> publisher.publishEvent(leaving)).isInstanceOf(StillFittedException.class);
    }

    @Test
    void anEnclosureOutOfUseTakesNoLamp() {
        database.sql("update enclosure set retired_at = ? where id = ?")
                .params(Timestamp.from(daysAgo(2)), enclosureId)
                .update();
        refused(Reason.ENCLOSURE_OUT_OF_USE, "", () -> fit(lamp, enclosureId, daysAgo(1)));
        assertThat(fit(lamp, enclosureId, daysAgo(3))).isPositive();
    }

    @Test
    void anotherSitesLampIsNotFound() {
        SiteFacts other = collection.site();
        LampFacts foreign = collection.lamp(other, collection.lampModel(other, LampClass.TUBE_T5));
        assertThatThrownBy(() -> fit(foreign, enclosureId, daysAgo(1))).isInstanceOf(NotFoundException.class);
    }

    @Test
    void anotherSitesEnclosureIsNotFound() {
        RigEntry entry = new RigEntry(
                collection.site().id(), enclosureId, now, "", lead.personId(), UUID.randomUUID(), Optional.empty());
        assertThatThrownBy(() -> changing.make(entry, new CoverStep.Put(RigExamples.mesh(Optional.of(0.5)))))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void anotherSitesCircuitIsNotFound() {
        long foreign =
                circuits.add(collection.site().id(), Optional.empty(), "A1").id();
        LampStep fit = new LampStep.Fit(
                lamp.id(), new Hanging("spot", Optional.empty(), Optional.empty(), Optional.of(foreign)));
        assertThatThrownBy(() -> make(daysAgo(1), fit)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void aSwappedLampTakesPlaceTimerAndCircuit() {
        CircuitFacts circuit = circuits.add(site.id(), Optional.of(roomId), "A1");
        Hanging hanging = hanging("basking tube").timed(Optional.of(RigExamples.tenHours()), Optional.of(circuit.id()));
        make(daysAgo(3), new LampStep.Fit(lamp.id(), hanging));
        LampFacts fresh = lamp();
        make(daysAgo(1), new LampStep.Swap(rig(now).fittings().get(0).id(), fresh.id()));
        FittingFacts fitting = rig(now).fittings().get(0);
        assertThat(fitting.hanging()).isEqualTo(hanging);
        assertThat(fitting.circuit()).contains(circuit);
        assertThat(fitting.lamp().id()).isEqualTo(fresh.id());
        assertThat(rigs.whereLampsHang(site.id()))
                .containsEntry(fresh.id(), enclosureId)
                .hasSize(1);
    }

    @Test
    void aTimerSetAnewLeavesTheLampWhereItIs() {
        fit(lamp, enclosureId, daysAgo(3));
        DailyTimer longer = new DailyTimer(LocalTime.of(7, 0), LocalTime.of(20, 30));
        make(daysAgo(1), new LampStep.SetTimer(rig(now).fittings().get(0).id(), Optional.of(longer), Optional.empty()));
        Hanging hanging = rig(now).fittings().get(0).hanging();
        assertThat(hanging.timer()).contains(longer);
        assertThat(hanging.mount()).isEqualTo(hanging("").mount());
    }

    @Test
    void aLateFactComesInTheRightOrder() {
        make(daysAgo(1), new CoverStep.Put(RigExamples.sheet(0.9)));
        fit(lamp, enclosureId, daysAgo(5));
        assertThat(rigs.changes(site.id(), enclosureId, 0))
                .extracting(RigChangeFacts::kind)
                .containsExactly(RigChangeKind.COVER_CHANGED, RigChangeKind.LAMP_FITTED);
        assertThat(rig(daysAgo(2)).fittings()).hasSize(1);
    }

    @Test
    void aLateFactSaysThatItIsLate() {
        fit(lamp, enclosureId, daysAgo(5));
        make(now, new CoverStep.Put(RigExamples.sheet(0.9)));
        assertThat(rigs.changes(site.id(), enclosureId, 0))
                .extracting(RigChangeFacts::isLate)
                .containsExactly(false, true);
    }

    @Test
    void aFactThatContradictsALaterOneIsRefused() {
        fit(lamp, enclosureId, daysAgo(5));
        make(daysAgo(2), new LampStep.Move(rig(now).fittings().get(0).id(), "far end", Optional.empty()));
        LampStep takeOut = new LampStep.TakeOut(rig(now).fittings().get(0).id());
        refused(Reason.CHANGED_LATER, "", () -> make(daysAgo(3), takeOut));
        refused(Reason.CHANGED_LATER, "", () -> make(daysAgo(2), takeOut));
    }

    @Test
    void whatIsGoneIsNotChanged() {
        fit(lamp, enclosureId, daysAgo(5));
        LampStep takeOut = new LampStep.TakeOut(rig(now).fittings().get(0).id());
        make(daysAgo(2), takeOut);
        refused(Reason.PART_ENDED, "", () -> make(daysAgo(1), takeOut));
    }

    @Test
    void nothingHappensInTheFuture() {
        refused(Reason.IN_FUTURE, "", () -> fit(lamp, enclosureId, now.plus(Duration.ofHours(1))));
    }

    @Test
    void aRefusedChangeLeavesNothingBehind() {
        fit(lamp, enclosureId, daysAgo(3));
        refused(Reason.LAMP_HANGS, "E1", () -> fit(lamp, enclosure("E2"), daysAgo(1)));
        assertThat(rigs.lastChanges(site.id())).containsOnlyKeys(enclosureId);
    }

    @Test
    void anEntrySentTwiceIsOneChange() {
        RigEntry entry = entry(enclosureId, daysAgo(1));
        RigStep step = new LampStep.Fit(lamp.id(), hanging("basking tube"));
        assertThat(changing.make(entry, step)).isEqualTo(changing.make(entry, step));
        assertThat(rig(now).fittings()).hasSize(1);
    }

    @Test
    void anEntrySentTwiceAtOnceIsOneChange() {
        RigEntry entry = entry(enclosureId, daysAgo(1));
        RigStep step = new CoverStep.Put(RigExamples.sheet(0.9));
        assertThat(Together.run(() -> changing.make(entry, step), () -> changing.make(entry, step)))
                .isEmpty();
        assertThat(rig(now).covers()).hasSize(1);
    }

    @Test
    void aKeyIsNotUsedAtTwoEnclosures() {
        RigEntry entry = entry(enclosureId, daysAgo(1));
        changing.make(entry, new CoverStep.Put(RigExamples.sheet(0.9)));
        RigEntry same = new RigEntry(
                site.id(), enclosure("E2"), daysAgo(1), "", lead.personId(), entry.key(), Optional.empty());
        assertThatThrownBy(() -> changing.make(same, new CoverStep.Put(RigExamples.sheet(0.9))))
                .isInstanceOf(ConflictException.class);
    }

    @Test
    void aFormMadeBeforeTheLastChangeIsRefused() {
        fit(lamp, enclosureId, daysAgo(3));
        RigEntry stale =
                new RigEntry(site.id(), enclosureId, now, "", lead.personId(), UUID.randomUUID(), Optional.of(0L));
        assertThatThrownBy(() -> changing.make(stale, new CoverStep.Put(RigExamples.sheet(0.9))))
                .isInstanceOf(StaleRigException.class);
    }

    @Test
    void twoWhoChangeARigAtOnceDoNotBothPass() {
        RigStep step = new CoverStep.Put(RigExamples.sheet(0.9));
        List<Throwable> thrown =
                Together.run(() -> changing.make(seenNothing(), step), () -> changing.make(seenNothing(), step));
        assertThat(thrown).singleElement().isInstanceOf(StaleRigException.class);
    }

    @Test
    void othersAreToldSinceWhenTheRigIsAnotherOne() {
        fit(lamp, enclosureId, daysAgo(3));
        assertThat(events.stream(RigChanged.class)).containsExactly(new RigChanged(site.id(), enclosureId, daysAgo(3)));
    }

    @Test
    void whatIsFoundAtFirstIsOneChange() {
        FirstRig found = new FirstRig(
                List.of(new LampStep.Fit(lamp.id(), hanging("tube")), new LampStep.Fit(lamp().id(), hanging("spot"))),
                List.of(RigExamples.sheet(0.9)),
                List.of());
        long change = changing.setUpFirst(entry(enclosureId, daysAgo(9)), found);
        assertThat(rig(now).fittings())
                .hasSize(2)
                .allMatch(fitting -> fitting.span().begunBy() == change);
        assertThat(rigs.changes(site.id(), enclosureId, 0))
                .extracting(RigChangeFacts::kind)
                .containsExactly(RigChangeKind.FIRST_SET_UP);
    }

    @Test
    void nothingIsFoundAtFirstWhereSomethingWasRecorded() {
        fit(lamp, enclosureId, daysAgo(3));
        FirstRig found = new FirstRig(List.of(), List.of(RigExamples.sheet(0.9)), List.of());
        refused(Reason.NOT_FIRST, "", () -> changing.setUpFirst(entry(enclosureId, daysAgo(9)), found));
    }

    @Test
    void aCircuitsNameIsTakenOnce() {
        circuits.add(site.id(), Optional.empty(), "A1");
        assertThatThrownBy(() -> circuits.add(site.id(), Optional.of(roomId), "a1"))
                .isInstanceOf(ConflictException.class);
    }

    private void refused(Reason reason, String where, Runnable change) {
        assertThatThrownBy(change::run).isInstanceOfSatisfying(RigRefusedException.class, refusal -> {
            assertThat(refusal.reason()).isEqualTo(reason);
            assertThat(refusal.where()).isEqualTo(where);
        });
    }

    private long fit(LampFacts fitted, long enclosure, Instant at) {
        return changing.make(entry(enclosure, at), new LampStep.Fit(fitted.id(), hanging("basking tube")));
    }

    private long make(Instant at, RigStep step) {
        return changing.make(entry(enclosureId, at), step);
    }

    private RigEntry entry(long enclosure, Instant at) {
        return new RigEntry(
                site.id(), enclosure, at, "for a test", lead.personId(), UUID.randomUUID(), Optional.empty());
    }

    private RigEntry seenNothing() {
        return new RigEntry(
                site.id(), enclosureId, daysAgo(1), "", lead.personId(), UUID.randomUUID(), Optional.of(0L));
    }

    private Rig rig(Instant at) {
        return rigs.at(site.id(), enclosureId, at);
    }

    private LampFacts lamp() {
        return collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
    }

    private long enclosure(String code) {
        return enclosures.add(site.id(), roomId, code, 1, Optional.empty());
    }

    private Instant daysAgo(int days) {
        return now.minus(Duration.ofDays(days));
    }
}
