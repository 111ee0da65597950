package dapple.animal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.TakenException;
import dapple.species.SpeciesFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class CountingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Animals animals;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private Counting counting;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private SpeciesFacts species;
    private Instant now;
    private long here;
    private long group;
    private int number;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        species = collection.species(site, "Epipedobates anthonyi");
        now = clock.instant();
        here = collection.emptyEnclosure(site);
        group = group(12, 30);
        move(group, here, 30);
    }

    @Test
    void aGroupBeginsWithItsFirstCount() {
        assertThat(count(group, 30)).isEqualTo(12);
    }

    @Test
    void aBirthAdds() {
        record(Happening.BIRTH, 5, 3);
        assertThat(count(group, 0)).isEqualTo(17);
    }

    @Test
    void aDeathTakesAway() {
        record(Happening.DEATH, 5, 3);
        assertThat(count(group, 0)).isEqualTo(7);
    }

    @Test
    void aRecountSetsTheCount() {
        record(Happening.RECOUNT, 9, 3);
        assertThat(count(group, 0)).isEqualTo(9);
    }

    @Test
    void theCountOfAnEarlierTimeStands() {
        record(Happening.DEATH, 5, 3);
        assertThat(count(group, 4)).isEqualTo(12);
    }

    @Test
    void moreThanThereAreCannotDie() {
        assertRefused(Refusal.COUNT, () -> record(Happening.DEATH, 13, 3));
    }

    @Test
    void aLateDeathMayNotLeaveTooFewForALaterOne() {
        record(Happening.DEATH, 11, 3);
        assertRefused(Refusal.COUNT, () -> record(Happening.DEATH, 2, 10));
    }

    @Test
    void aLateDeathCanMakeTheLastOneTheEnd() {
        record(Happening.DEATH, 11, 3);
        record(Happening.DEATH, 1, 10);
        assertThat(details(group).end()).contains(new RecordEnd(Happening.DEATH, at(3)));
    }

    @Test
    void whatIsPostedTwiceIsStoredOnce() {
        Happened how = how(3);
        counting.record(site.id(), group, Happening.BIRTH, 5, how);
        counting.record(site.id(), group, Happening.BIRTH, 5, how);
        assertThat(count(group, 0)).isEqualTo(17);
    }

    @Test
    void twoWhoEnterDeathsAtOnceLeaveNoCountBelowZero() {
        Together.run(() -> record(Happening.DEATH, 8, 3), () -> record(Happening.DEATH, 7, 2));
        assertThat(count(group, 0)).isIn(4, 5);
    }

    @Test
    void theLastDeathEndsTheStay() {
        record(Happening.DEATH, 12, 3);
        assertThat(animals.staysOf(site.id(), group)).extracting(StayFacts::to).containsExactly(Optional.of(at(3)));
    }

    @Test
    void theLastDeathClosesTheRecord() {
        record(Happening.DEATH, 12, 3);
        assertThat(details(group).end()).contains(new RecordEnd(Happening.DEATH, at(3)));
    }

    @Test
    void aClosedRecordIsFrozen() {
        record(Happening.TRANSFER, 12, 3);
        AnimalDetails closed = details(group);
        assertRefused(Refusal.HAS_ENDED, () -> keeping.change(site.id(), group, closed.version(), closed.state()));
    }

    @Test
    void aClosedRecordTakesNoBirth() {
        record(Happening.RELEASE, 12, 3);
        assertRefused(Refusal.HAS_ENDED, () -> record(Happening.BIRTH, 1, 2));
    }

    @Test
    void aClosedRecordIsNotMoved() {
        record(Happening.DEATH, 12, 3);
        assertRefused(Refusal.HAS_ENDED, () -> move(group, collection.emptyEnclosure(site), 1));
    }

    @Test
    void aClosedRecordIsNotAmongThoseHere() {
        record(Happening.DEATH, 12, 3);
        assertThat(animals.here(site.id())).extracting(AnimalFacts::id).doesNotContain(group);
    }

    @Test
    void nobodyDiesBeforeTheLastMove() {
        move(group, collection.emptyEnclosure(site), 2);
        assertRefused(Refusal.MOVED_LATER, () -> record(Happening.DEATH, 12, 3));
    }

    @Test
    void oneAnimalDies() {
        long animal = animal();
        counting.record(site.id(), animal, Happening.DEATH, 1, how(1));
        assertThat(details(animal).isHere()).isFalse();
    }

    @Test
    void oneAnimalIsNotCounted() {
        long animal = animal();
        assertRefused(Refusal.NO_GROUP, () -> counting.record(site.id(), animal, Happening.RECOUNT, 1, how(1)));
    }

    @Test
    void whoReturnsIsAsManyAsWent() {
        record(Happening.TRANSFER, 12, 3);
        counting.comeBack(site.id(), group, how(1));
        assertThat(count(group, 0)).isEqualTo(12);
    }

    @Test
    void whoReturnsWasNotHereMeanwhile() {
        record(Happening.TRANSFER, 12, 3);
        counting.comeBack(site.id(), group, how(1));
        assertRefused(Refusal.NOT_HERE_THEN, () -> move(group, here, 2));
    }

    @Test
    void whoReturnsIsMovedSomewhere() {
        record(Happening.TRANSFER, 12, 3);
        counting.comeBack(site.id(), group, how(2));
        move(group, here, 1);
        assertThat(animals.inEnclosure(site.id(), here, now))
                .extracting(AnimalFacts::id)
                .contains(group);
    }

    @Test
    void nobodyReturnsWhoIsHere() {
        assertRefused(Refusal.CANNOT_RETURN, () -> counting.comeBack(site.id(), group, how(1)));
    }

    @Test
    void nobodyReturnsBeforeTheEnd() {
        record(Happening.TRANSFER, 12, 3);
        assertRefused(Refusal.CANNOT_RETURN, () -> counting.comeBack(site.id(), group, how(4)));
    }

    @Test
    void oneWhoLeavesIsOneFewer() {
        split(AnimalKind.INDIVIDUAL, 1, 3);
        assertThat(count(group, 0)).isEqualTo(11);
    }

    @Test
    void oneWhoLeavesIsOne() {
        assertThat(count(split(AnimalKind.INDIVIDUAL, 1, 3), 0)).isEqualTo(1);
    }

    @Test
    void aNewGroupHasWhatLeft() {
        assertThat(count(split(AnimalKind.GROUP, 5, 3), 0)).isEqualTo(5);
    }

    @Test
    void whatLeavesBeginsWhereTheGroupIs() {
        long leaving = split(AnimalKind.INDIVIDUAL, 1, 3);
        assertThat(animals.staysOf(site.id(), leaving))
                .extracting(StayFacts::enclosureId, StayFacts::from, StayFacts::to)
                .containsExactly(tuple(here, at(3), Optional.empty()));
    }

    @Test
    void whatLeavesHasTheStaysOfTheGroupBefore() {
        long second = collection.emptyEnclosure(site);
        move(group, second, 20);
        long leaving = split(AnimalKind.INDIVIDUAL, 1, 3);
        assertThat(animals.history(site.id(), leaving))
                .extracting(stay -> stay.animal().id(), StayFacts::enclosureId, StayFacts::from, StayFacts::to)
                .containsExactly(
                        tuple(group, here, at(30), Optional.of(at(20))),
                        tuple(group, second, at(20), Optional.of(at(3))),
                        tuple(leaving, second, at(3), Optional.empty()));
    }

    @Test
    void theLineageReachesThroughTwoGroups() {
        long part = split(AnimalKind.GROUP, 5, 20);
        long one = counting.split(site.id(), new Split(part, AnimalKind.INDIVIDUAL, next(), "One", 1), how(3));
        assertThat(animals.lineage(site.id(), one))
                .containsExactly(
                        new Lineage(group, Optional.of(at(30)), Optional.of(at(20))),
                        new Lineage(part, Optional.of(at(20)), Optional.of(at(3))),
                        new Lineage(one, Optional.of(at(3)), Optional.empty()));
    }

    @Test
    void theSplitMayBeEnteredAfterTheGroupHasMovedOn() {
        long second = collection.emptyEnclosure(site);
        move(group, second, 2);
        long leaving = split(AnimalKind.INDIVIDUAL, 1, 10);
        assertThat(animals.inEnclosure(site.id(), here, now))
                .extracting(AnimalFacts::id)
                .contains(leaving);
    }

    @Test
    void aSplitEnteredLateGivesTheSameHistory() {
        long onTime = split(AnimalKind.INDIVIDUAL, 1, 10);
        move(group, collection.emptyEnclosure(site), 2);
        long late = split(AnimalKind.INDIVIDUAL, 1, 10);
        assertThat(places(late)).isEqualTo(places(onTime));
    }

    private List<List<Object>> places(long animal) {
        return animals.history(site.id(), animal).stream()
                .map(stay -> List.<Object>of(stay.enclosureId(), stay.from(), stay.to()))
                .toList();
    }

    @Test
    void moreThanThereAreCannotLeave() {
        assertRefused(Refusal.COUNT, () -> split(AnimalKind.GROUP, 13, 3));
    }

    @Test
    void theLastToLeaveClosesTheGroup() {
        split(AnimalKind.GROUP, 12, 3);
        assertThat(details(group).end()).contains(new RecordEnd(Happening.SPLIT_OFF, at(3)));
    }

    @Test
    void aGroupThatWasSplitUpDoesNotReturn() {
        split(AnimalKind.GROUP, 12, 3);
        assertRefused(Refusal.CANNOT_RETURN, () -> counting.comeBack(site.id(), group, how(1)));
    }

    @Test
    void aSplitNeedsANumberOfItsOwn() {
        String used = details(group).state().accessionNumber();
        assertThatThrownBy(() ->
                        counting.split(site.id(), new Split(group, AnimalKind.INDIVIDUAL, used, "One", 1), how(3)))
                .isInstanceOf(TakenException.class);
    }

    @Test
    void aSplitPostedTwiceMakesOneRecord() {
        Happened how = how(3);
        Split one = new Split(group, AnimalKind.INDIVIDUAL, next(), "One", 1);
        long first = counting.split(site.id(), one, how);
        assertThat(counting.split(site.id(), one, how)).isEqualTo(first);
    }

    @Test
    void oneWhoJoinsIsOneMore() {
        counting.join(site.id(), animal(), group, how(1));
        assertThat(count(group, 0)).isEqualTo(13);
    }

    @Test
    void whoJoinsHasARecordThatEnds() {
        long animal = animal();
        counting.join(site.id(), animal, group, how(1));
        assertThat(details(animal).end()).contains(new RecordEnd(Happening.JOINED, at(1)));
    }

    @Test
    void whoJoinsIsInNoOtherPlace() {
        long animal = animal();
        move(animal, collection.emptyEnclosure(site), 5);
        counting.join(site.id(), animal, group, how(1));
        assertThat(animals.staysOf(site.id(), animal)).extracting(StayFacts::to).containsExactly(Optional.of(at(1)));
    }

    @Test
    void aGroupJoinsAsMany() {
        counting.join(site.id(), group(7, 9), group, how(1));
        assertThat(count(group, 0)).isEqualTo(19);
    }

    @Test
    void noneJoinsBeforeItsOwnLastEvent() {
        long other = group(7, 9);
        counting.record(site.id(), other, Happening.BIRTH, 1, how(2));
        assertRefused(Refusal.COUNT, () -> counting.join(site.id(), other, group, how(5)));
    }

    @Test
    void noneJoinsAnotherSpecies() {
        long stranger = keeping.add(
                site.id(),
                state(collection.species(site, "Epipedobates tricolor").id()),
                keeper.personId());
        assertRefused(Refusal.OTHER_SPECIES, () -> counting.join(site.id(), stranger, group, how(1)));
    }

    @Test
    void noneJoinsOneAnimal() {
        assertRefused(
                Refusal.NO_GROUP,
                () -> counting.join(site.id(), /* animalId= */ group, /* groupId= */ animal(), how(1)));
    }

    @Test
    void noneJoinsItself() {
        assertRefused(Refusal.SAME_RECORD, () -> counting.join(site.id(), group, group, how(1)));
    }

    @Test
    void nothingHappensToAnimalsOfAnotherSite() {
        assertThatThrownBy(() -> counting.record(collection.site().id(), group, Happening.BIRTH, 1, how(1)))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void twoWhoLetTheLastOneJoinAtOnceCountItOnce() {
        long animal = animal();
        Together.run(
                () -> counting.join(site.id(), animal, group, how(1)),
                () -> counting.join(site.id(), animal, group, how(1)));
        assertThat(count(group, 0)).isEqualTo(13);
    }

    private void assertRefused(Refusal refusal, ThrowingCallable work) {
        assertThatThrownBy(work)
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        thrown -> assertThat(thrown.refusal()).isEqualTo(refusal));
    }

    private void record(Happening kind, int howMany, int daysAgo) {
        counting.record(site.id(), group, kind, howMany, how(daysAgo));
    }

    private long split(AnimalKind kind, int howMany, int daysAgo) {
        return counting.split(site.id(), new Split(group, kind, next(), "Part", howMany), how(daysAgo));
    }

    private long group(int howMany, int daysAgo) {
        return keeping.addGroup(site.id(), state(species.id()), howMany, how(daysAgo));
    }

    private long animal() {
        return keeping.add(site.id(), state(species.id()), keeper.personId());
    }

    private AnimalState state(long speciesId) {
        return AnimalState.of(new NewAnimal(next(), "Name", speciesId));
    }

    private String next() {
        number++;
        return "2026-" + number;
    }

    private void move(long animal, long enclosure, int daysAgo) {
        animals.move(site.id(), new Arrival(animal, enclosure, at(daysAgo), keeper.personId()));
    }

    private int count(long animal, int daysAgo) {
        return animals.counts(site.id(), List.of(animal), at(daysAgo)).getOrDefault(animal, -1);
    }

    private AnimalDetails details(long animal) {
        return animals.details(site.id(), animal);
    }

    private Happened how(int daysAgo) {
        return new Happened(at(daysAgo), "for a test", UUID.randomUUID(), keeper.personId());
    }

    private Instant at(int daysAgo) {
        return now.minus(Duration.ofDays(daysAgo));
    }
}
