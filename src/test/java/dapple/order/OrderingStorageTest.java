package dapple.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.animal.AnimalKeeping;
import dapple.animal.AnimalKind;
import dapple.animal.AnimalState;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.Counting;
import dapple.animal.Happened;
import dapple.animal.Happening;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.animal.Refusal;
import dapple.animal.RefusedException;
import dapple.animal.Sex;
import dapple.animal.Split;
import dapple.people.Role;
import dapple.people.SignedIn;
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
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

@StorageTest
@RecordApplicationEvents
class OrderingStorageTest {
    private static final Ordered OFF = new Ordered.UvOff();

    @Autowired
    private TestCollection collection;

    @Autowired
    private Ordering ordering;

    @Autowired
    private VetOrders orders;

    @Autowired
    private Animals animals;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private Counting counting;

    @Autowired
    private Clock clock;

    @Autowired
    private ApplicationEvents events;

    private SiteFacts site;
    private SignedIn vet;
    private SpeciesFacts species;
    private Home home;
    private long animal;
    private Instant now;
    private LocalDate today;

    @BeforeEach
    void furnish() {
        site = collection.site();
        vet = collection.person(site, Role.VET);
        species = collection.species(site, vet, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        home = collection.home(site, vet, species);
        animal = home.animal().id();
        now = clock.instant();
        today = LocalDate.ofInstant(now, site.timeZone());
    }

    @Test
    void anOrderIsInForceFromNow() {
        place(OFF, Optional.empty());
        assertThat(orders.inForce(site.id(), home.enclosureId(), clock.instant()))
                .containsOnlyKeys(animal);
    }

    @Test
    void anOrderIsNotInForceBefore() {
        place(OFF, Optional.empty());
        assertThat(orders.inForce(site.id(), home.enclosureId(), now)).isEmpty();
    }

    @Test
    void aLaterOrderBeginsLater() {
        place(OFF, Optional.of(in(2)));
        assertThat(orders.inForceOf(site.id(), List.of(animal), in(1))).isEmpty();
    }

    @Test
    void anOrderHoldsThroughItsLastDayInTheTimeOfTheSite() {
        place(OFF, Optional.empty());
        Instant end = today.plusDays(8).atStartOfDay(site.timeZone()).toInstant();
        assertThat(orders.ofAnimal(site.id(), animal).get(0).to()).isEqualTo(end);
    }

    @Test
    void theNumbersComeBackAsOrdered() {
        place(new Ordered.Cap(2.5), Optional.empty());
        assertThat(orders.ofAnimal(site.id(), animal).get(0).ordered()).isEqualTo(new Ordered.Cap(2.5));
    }

    @Test
    void noOrderIsBackdated() {
        assertFault(OrderFault.BACKDATED, OFF, Optional.of(now.minus(Duration.ofMinutes(2))), 7);
    }

    @Test
    void noOrderEndsBeforeItBegins() {
        assertFault(OrderFault.ENDS_BEFORE_IT_BEGINS, OFF, Optional.of(in(20)), 7);
    }

    @Test
    void aCapLowersTheCeilingOfTheSpecies() {
        assertFault(OrderFault.CAP_NOT_LOWER, new Ordered.Cap(8), Optional.empty(), 7);
    }

    @Test
    void aCapNeedsATarget() {
        animal = collection
                .home(site, vet, collection.species(site, "Pogona minor"))
                .animal()
                .id();
        assertFault(OrderFault.CAP_WITHOUT_TARGET, new Ordered.Cap(2), Optional.empty(), 7);
    }

    @Test
    void aNewOrderEndsTheFormer() {
        place(OFF, Optional.empty());
        long second = place(new Ordered.Cap(2), Optional.empty());
        assertThat(orders.openOf(site.id(), animal, clock.instant()))
                .extracting(OrderFacts::id)
                .containsExactly(second);
    }

    @Test
    void theFormerHoldsUntilALaterOneBegins() {
        long first = place(OFF, Optional.empty());
        place(new Ordered.Cap(2), Optional.of(in(2)));
        assertThat(orders.inForceOf(site.id(), List.of(animal), in(1)).values())
                .extracting(OrderFacts::id)
                .containsExactly(first);
    }

    @Test
    void anOrderThatWouldBeginLaterNeverDoesAfterANewOne() {
        place(OFF, Optional.of(in(3)));
        long second = place(new Ordered.Cap(2), Optional.empty());
        assertThat(orders.inForceOf(site.id(), List.of(animal), in(4)).values())
                .extracting(OrderFacts::id)
                .containsExactly(second);
    }

    @Test
    void theFormerSaysWhatFollowedIt() {
        place(OFF, Optional.empty());
        long second = place(new Ordered.Cap(2), Optional.empty());
        assertThat(orders.ofAnimal(site.id(), animal).get(1).earlyEnd())
                .flatMap(OrderFacts.EarlyEnd::followedBy)
                .contains(second);
    }

    @Test
    void anOrderPostedTwiceIsPlacedOnce() {
        NewOrder order = order(OFF, Optional.empty(), 7);
        assertThat(ordering.place(site.id(), order)).isEqualTo(ordering.place(site.id(), order));
    }

    @Test
    void twoOrdersAtOnceLeaveOneInForce() {
        Together.run(() -> place(OFF, Optional.empty()), () -> place(new Ordered.Cap(2), Optional.empty()));
        assertThat(orders.openOf(site.id(), animal, clock.instant())).hasSize(1);
    }

    @Test
    void aVetEndsAnOrderEarly() {
        end(place(OFF, Optional.empty()));
        assertThat(orders.openOf(site.id(), animal, clock.instant())).isEmpty();
    }

    @Test
    void whoEndedItAndWhyStaysOnRecord() {
        end(place(OFF, Optional.empty()));
        assertThat(orders.ofAnimal(site.id(), animal).get(0).earlyEnd())
                .hasValueSatisfying(
                        found -> assertThat(found.reason() + found.personId()).isEqualTo("healed" + vet.personId()));
    }

    @Test
    void anOrderThatIsOverIsNotEndedAgain() {
        long order = place(OFF, Optional.empty());
        end(order);
        OrderFacts over = orders.ofAnimal(site.id(), animal).get(0);
        end(order);
        assertThat(orders.ofAnimal(site.id(), animal).get(0)).isEqualTo(over);
    }

    @Test
    void anOrderEndedBeforeItBeganNeverWasInForce() {
        end(place(OFF, Optional.of(in(2))));
        assertThat(orders.inForceOf(site.id(), List.of(animal), in(3))).isEmpty();
    }

    @Test
    void theEnclosureIsToldOf() {
        events.clear();
        place(OFF, Optional.of(in(2)));
        assertThat(events.stream(OrderChanged.class))
                .containsExactly(new OrderChanged(site.id(), animal, home.enclosureId(), in(2)));
    }

    @Test
    void anOrderGoesWithTheAnimal() {
        place(OFF, Optional.empty());
        Home other = collection.home(site, vet, species);
        Instant moved = clock.instant();
        animals.move(site.id(), new Arrival(animal, other.enclosureId(), moved, vet.personId()));
        assertThat(orders.inForce(site.id(), other.enclosureId(), moved)).containsOnlyKeys(animal);
    }

    @Test
    void nothingIsOrderedForWhoIsGone() {
        counting.record(site.id(), animal, Happening.DEATH, 1, how(now));
        assertThatThrownBy(() -> place(OFF, Optional.empty())).isInstanceOf(RefusedException.class);
    }

    @Test
    void nothingIsOrderedForAnotherSite() {
        long elsewhere = collection.site().id();
        assertThatThrownBy(() -> ordering.place(elsewhere, order(OFF, Optional.empty(), 7)))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void theOrderOfAnotherAnimalIsNotEnded() {
        long order = place(OFF, Optional.empty());
        long other = collection.home(site, vet, species).animal().id();
        assertThatThrownBy(() -> ordering.end(site.id(), other, order, new Ordering.Ending("healed", vet.personId())))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void whatLeavesAGroupIsTreatedOnAsTheGroupWas() {
        animal = group();
        long order = place(OFF, Optional.empty());
        long leaving = counting.split(
                site.id(), new Split(animal, AnimalKind.INDIVIDUAL, "S1", "One", 1), how(clock.instant()));
        assertThat(orders.openOf(site.id(), leaving, clock.instant()))
                .extracting(OrderFacts::inheritedFrom)
                .containsExactly(Optional.of(order));
    }

    @Test
    void noTreatmentEndsByJoiningAGroup() {
        place(OFF, Optional.empty());
        long group = group();
        assertThatThrownBy(() -> counting.join(site.id(), animal, group, how(clock.instant())))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        thrown -> assertThat(thrown.refusal()).isEqualTo(Refusal.UNDER_ORDER));
    }

    private long group() {
        long group = keeping.addGroup(
                site.id(),
                new AnimalState(
                        "G1",
                        "Hatchlings",
                        species.id(),
                        Sex.UNKNOWN,
                        Optional.empty(),
                        Pigment.NORMAL,
                        Reach.EVERYWHERE,
                        ""),
                6,
                how(now.minusSeconds(60)));
        animals.move(site.id(), new Arrival(group, home.enclosureId(), now.minusSeconds(60), vet.personId()));
        return group;
    }

    private void assertFault(OrderFault fault, Ordered ordered, Optional<Instant> from, int days) {
        assertThatThrownBy(() -> ordering.place(site.id(), order(ordered, from, days)))
                .isInstanceOfSatisfying(
                        OrderRefusedException.class,
                        thrown -> assertThat(thrown.fault()).isEqualTo(fault));
    }

    private long place(Ordered ordered, Optional<Instant> from) {
        return ordering.place(site.id(), order(ordered, from, 7));
    }

    private NewOrder order(Ordered ordered, Optional<Instant> from, int days) {
        return new NewOrder(
                animal, ordered, "eyes shut", from, today.plusDays(days), UUID.randomUUID(), vet.personId());
    }

    private void end(long order) {
        ordering.end(site.id(), animal, order, new Ordering.Ending("healed", vet.personId()));
    }

    private Happened how(Instant at) {
        return new Happened(at, "for a test", UUID.randomUUID(), vet.personId());
    }

    private Instant in(int days) {
        return now.plus(Duration.ofDays(days));
    }
}
