package dapple.animal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import dapple.enclosure.EnclosureRetirement;
import dapple.enclosure.Enclosures;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

@StorageTest
@RecordApplicationEvents
class MovingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Animals animals;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private Moving moving;

    @Autowired
    private EnclosureRetirement retirement;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Clock clock;

    @Autowired
    private ApplicationEvents events;

    private SiteFacts site;
    private SignedIn keeper;
    private SpeciesFacts species;
    private Home first;
    private Home second;
    private long empty;
    private Instant now;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        species = collection.species(site, "Testudo hermanni");
        first = collection.home(site, keeper, species);
        second = collection.home(site, keeper, species);
        empty = collection.emptyEnclosure(site);
        now = clock.instant();
        events.clear();
    }

    @Test
    void severalMoveAtOnce() {
        move(first.enclosureId(), empty, 10, first.animal());
        moving.move(
                site.id(),
                new Move(
                        List.of(first.animal().id()),
                        Optional.of(empty),
                        second.enclosureId(),
                        ago(9),
                        "company",
                        keeper.personId()));
        move(second.enclosureId(), empty, 5, first.animal(), second.animal());
        assertThat(animals.inEnclosure(site.id(), empty, now)).containsExactly(first.animal(), second.animal());
    }

    @Test
    void allMoveOrNone() {
        assertRefused(Refusal.NOT_THERE, () -> move(first.enclosureId(), empty, 5, first.animal(), second.animal()));
        assertThat(animals.inEnclosure(site.id(), empty, now)).isEmpty();
    }

    @Test
    void theReasonAndWhoSaysSoStayOnRecord() {
        move(first.enclosureId(), empty, 5, first.animal());
        assertThat(animals.stayRecord(site.id(), first.animal().id()).get(0))
                .extracting(StayRecord::reason, StayRecord::personId)
                .containsExactly("for a test", keeper.personId());
    }

    @Test
    void bothEnclosuresAreToldOf() {
        move(first.enclosureId(), empty, 5, first.animal());
        assertThat(events.stream(StayChanged.class))
                .containsExactly(
                        new StayChanged(site.id(), first.enclosureId(), ago(5)),
                        new StayChanged(site.id(), empty, ago(5)));
    }

    @Test
    void aMovePostedTwiceIsRefused() {
        move(first.enclosureId(), empty, 5, first.animal());
        assertRefused(Refusal.NOT_THERE, () -> move(first.enclosureId(), empty, 5, first.animal()));
    }

    @Test
    void nobodyMovesToWhereItIs() {
        assertRefused(Refusal.ALREADY_THERE, () -> move(first.enclosureId(), first.enclosureId(), 5, first.animal()));
    }

    @Test
    void nobodyMovesBeforeItsLastMove() {
        move(first.enclosureId(), empty, 5, first.animal());
        assertRefused(Refusal.MOVED_LATER, () -> move(empty, second.enclosureId(), 6, first.animal()));
    }

    @Test
    void nobodyMovesToAnEnclosureOutOfUse() {
        retirement.retire(site.id(), empty);
        assertRefused(Refusal.OUT_OF_USE, () -> move(first.enclosureId(), empty, 0, first.animal()));
    }

    @Test
    void nobodyMovesToAnEnclosureThatWasInUseThen() {
        retirement.retire(site.id(), empty);
        assertRefused(Refusal.OUT_OF_USE, () -> move(first.enclosureId(), empty, 5, first.animal()));
    }

    @Test
    void nobodyMovesInWhileAnEnclosureLeavesUse() {
        Together.run(
                () -> retirement.retire(site.id(), empty), () -> move(first.enclosureId(), empty, 5, first.animal()));
        boolean isLivedIn = !animals.inEnclosure(site.id(), empty, now).isEmpty();
        assertThat(enclosures.get(site.id(), empty).isInUse()).isEqualTo(isLivedIn);
    }

    @Test
    void twoWhoMoveAnAnimalAtOnceLeaveItInOnePlace() {
        Together.run(
                () -> move(first.enclosureId(), empty, 5, first.animal()),
                () -> move(first.enclosureId(), second.enclosureId(), 4, first.animal()));
        assertThat(animals.staysOf(site.id(), first.animal().id()))
                .filteredOn(stay -> stay.to().isEmpty())
                .hasSize(1);
    }

    @Test
    void twoWhoMoveTheSameTwoInTurnDoNotWaitForEachOther() {
        move(second.enclosureId(), first.enclosureId(), 30, second.animal());
        List<Throwable> thrown = Together.run(
                () -> move(first.enclosureId(), empty, 5, first.animal(), second.animal()),
                () -> move(first.enclosureId(), second.enclosureId(), 5, second.animal(), first.animal()));
        assertThat(thrown).hasSize(1).allMatch(RefusedException.class::isInstance);
    }

    @Test
    void aStayThatNeverWasLetsTheOneBeforeGoOn() {
        move(first.enclosureId(), empty, 5, first.animal());
        withdraw(Optional.empty());
        assertThat(animals.staysOf(site.id(), first.animal().id()))
                .extracting(StayFacts::enclosureId, StayFacts::to)
                .containsExactly(tuple(first.enclosureId(), Optional.empty()));
    }

    @Test
    void afterAWrongMoveAnEarlierOneCanBeEntered() {
        move(first.enclosureId(), empty, 5, first.animal());
        withdraw(Optional.empty());
        move(first.enclosureId(), second.enclosureId(), 8, first.animal());
        assertThat(animals.inEnclosure(site.id(), second.enclosureId(), ago(6))).contains(first.animal());
    }

    @Test
    void aStayInTheWrongEnclosureIsReplacedOverTheSameTime() {
        move(first.enclosureId(), empty, 5, first.animal());
        withdraw(Optional.of(second.enclosureId()));
        assertThat(animals.staysOf(site.id(), first.animal().id()))
                .extracting(StayFacts::enclosureId, StayFacts::from, StayFacts::to)
                .contains(tuple(second.enclosureId(), ago(5), Optional.empty()))
                .hasSize(2);
    }

    @Test
    void aPastStayIsReplacedOverItsOwnTime() {
        move(first.enclosureId(), empty, 9, first.animal());
        long wrong = newest();
        move(empty, first.enclosureId(), 5, first.animal());
        correct(wrong, Optional.of(second.enclosureId()));
        assertThat(animals.staysOf(site.id(), first.animal().id()).get(1))
                .extracting(StayFacts::enclosureId, StayFacts::from, StayFacts::to)
                .containsExactly(second.enclosureId(), ago(9), Optional.of(ago(5)));
    }

    @Test
    void aPastStayIsNotTakenAway() {
        move(first.enclosureId(), empty, 9, first.animal());
        long wrong = newest();
        move(empty, first.enclosureId(), 5, first.animal());
        assertRefused(Refusal.NOT_NEWEST, () -> correct(wrong, Optional.empty()));
    }

    @Test
    void aWithdrawnStayKeepsWhoAndWhy() {
        move(first.enclosureId(), empty, 5, first.animal());
        withdraw(Optional.empty());
        assertThat(animals.stayRecord(site.id(), first.animal().id()).get(0).withdrawal())
                .hasValueSatisfying(
                        found -> assertThat(found.reason() + found.personId()).isEqualTo("wrong" + keeper.personId()));
    }

    @Test
    void aWithdrawnStayIsNoStay() {
        move(first.enclosureId(), empty, 5, first.animal());
        withdraw(Optional.empty());
        assertThat(animals.inEnclosure(site.id(), empty, now)).isEmpty();
    }

    @Test
    void aStayIsWithdrawnOnce() {
        move(first.enclosureId(), empty, 5, first.animal());
        long wrong = newest();
        correct(wrong, Optional.empty());
        assertRefused(Refusal.WITHDRAWN, () -> correct(wrong, Optional.empty()));
    }

    @Test
    void twoWhoWithdrawAStayAtOnceLeaveTheAnimalInOnePlace() {
        move(first.enclosureId(), empty, 5, first.animal());
        long wrong = newest();
        Together.run(() -> correct(wrong, Optional.empty()), () -> correct(wrong, Optional.of(second.enclosureId())));
        assertThat(animals.staysOf(site.id(), first.animal().id()))
                .filteredOn(stay -> stay.to().isEmpty())
                .hasSize(1);
    }

    @Test
    void theEnclosuresOfAWithdrawnStayAreToldOf() {
        move(first.enclosureId(), empty, 5, first.animal());
        events.clear();
        withdraw(Optional.empty());
        assertThat(events.stream(StayChanged.class))
                .containsExactly(
                        new StayChanged(site.id(), empty, ago(5)),
                        new StayChanged(site.id(), first.enclosureId(), ago(5)));
    }

    @Test
    void theStayBeforeDoesNotGoOnInAnEnclosureOutOfUse() {
        move(first.enclosureId(), empty, 5, first.animal());
        retirement.retire(site.id(), first.enclosureId());
        withdraw(Optional.empty());
        assertThat(animals.presentStays(site.id(), List.of(first.animal().id())))
                .isEmpty();
    }

    @Test
    void noStayOfAnotherAnimalIsWithdrawn() {
        long foreign = animals.staysOf(site.id(), second.animal().id()).get(0).id();
        assertThatThrownBy(() -> correct(foreign, Optional.empty())).isInstanceOf(NotFoundException.class);
    }

    @Test
    void readingsWhereAnAnimalLivedAreToldOfWhenItWasAnotherSpecies() {
        AnimalDetails animal = animals.details(site.id(), first.animal().id());
        AnimalState old = animal.state();
        SpeciesFacts other = collection.species(site, "Testudo graeca");
        keeping.change(
                site.id(),
                animal.id(),
                animal.version(),
                new AnimalState(
                        old.accessionNumber(),
                        old.name(),
                        other.id(),
                        old.sex(),
                        old.born(),
                        old.pigment(),
                        old.reach(),
                        old.note()));
        assertThat(events.stream(StayChanged.class))
                .extracting(StayChanged::enclosureId)
                .containsExactly(first.enclosureId());
    }

    private void assertRefused(Refusal refusal, ThrowingCallable work) {
        assertThatThrownBy(work)
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        thrown -> assertThat(thrown.refusal()).isEqualTo(refusal));
    }

    private void move(long from, long to, int minutesAgo, AnimalFacts... who) {
        List<Long> ids = List.of(who).stream().map(AnimalFacts::id).toList();
        moving.move(site.id(), new Move(ids, Optional.of(from), to, ago(minutesAgo), "for a test", keeper.personId()));
    }

    private long newest() {
        return animals.stayRecord(site.id(), first.animal().id()).get(0).stay().id();
    }

    private void withdraw(Optional<Long> instead) {
        correct(newest(), instead);
    }

    private void correct(long stay, Optional<Long> instead) {
        moving.correct(site.id(), new StayCorrection(first.animal().id(), stay, instead, "wrong", keeper.personId()));
    }

    private Instant ago(int minutes) {
        return now.minus(Duration.ofMinutes(minutes));
    }
}
