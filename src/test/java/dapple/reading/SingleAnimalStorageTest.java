package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Served;
import dapple.light.quantity.Quantity;
import dapple.order.NewOrder;
import dapple.order.Ordered;
import dapple.order.Ordering;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Two species share an enclosure; the basking point serves one animal of the second alone. */
@StorageTest
class SingleAnimalStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Readings readings;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Animals animals;

    @Autowired
    private Ordering ordering;

    @Autowired
    private Clock clock;

    private final UUID visit = UUID.randomUUID();
    private SiteFacts site;
    private SignedIn keeper;
    private SpeciesFacts shy;
    private Home home;
    private long elsewhere;

    @BeforeEach
    void share() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER, Role.VET);
        SpeciesFacts bold = collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        shy = collection.species(site, keeper, "Correlophus ciliatus", new UvZone(1, LightMethod.SHADE));
        home = collection.home(site, keeper, bold);
        elsewhere = collection.emptyEnclosure(site);
    }

    @Test
    void whomAPointServesIsStored() {
        AnimalFacts moss = arrived("Moss");
        Served served = new Served(Set.of(home.animal().speciesId()), Set.of(moss.id()));
        enclosures.serve(site.id(), home.basking().id(), served);
        assertThat(enclosures.point(site.id(), home.basking().id()).served()).isEqualTo(served);
        enclosures.serve(site.id(), home.basking().id(), Served.ALL);
        assertThat(enclosures.point(site.id(), home.basking().id()).served()).isEqualTo(Served.ALL);
    }

    @Test
    void oneAnimalIsJudgedByTheTargetOfItsSpecies() {
        serve(arrived("Moss"));
        assertThat(species(log(home.basking()))).containsExactly(Optional.of(shy.id()));
    }

    @Test
    void byAVetsOrderWhereOneIsInForceForIt() {
        AnimalFacts moss = arrived("Moss");
        long order = order(moss);
        serve(moss);
        assertThat(readings.judged(site.id(), log(home.basking())))
                .extracting(view -> view.reading().orderId())
                .containsExactly(Optional.of(order));
    }

    @Test
    void notByTheOrderForAnotherOfItsSpecies() {
        serve(arrived("Moss"));
        order(arrived("Fern"));
        assertThat(readings.judged(site.id(), log(home.basking())))
                .extracting(view -> view.reading().orderId())
                .containsExactly(Optional.empty());
    }

    @Test
    void whoHasLeftIsJudgedNoMore() {
        AnimalFacts moss = arrived("Moss");
        serve(moss);
        animals.move(site.id(), new Arrival(moss.id(), elsewhere, minutesAgo(5), keeper.personId()));
        assertThat(species(log(home.basking()))).containsExactly(Optional.empty());
    }

    @Test
    void theSameIsFoundWhicheverIsEnteredFirst() {
        long reading = log(home.basking());
        serve(arrived("Moss"));
        assertThat(species(reading)).containsExactly(Optional.of(shy.id()));
    }

    @Test
    void anOrderIsFollowedWhicheverIsEnteredFirst() {
        AnimalFacts moss = arrived("Moss");
        long order = order(moss);
        long reading = log(home.basking());
        serve(moss);
        assertThat(readings.judged(site.id(), reading))
                .extracting(view -> view.reading().orderId())
                .containsExactly(Optional.of(order));
    }

    /** Shade for all and a basking point for another make no gradient for who is not served at it. */
    @Test
    void theBaskingPointOfAnotherAnimalMakesNoGradient() {
        AnimalFacts moss = arrived("Moss");
        AnimalFacts fern = arrived("Fern");
        serve(moss);
        enclosures.serve(site.id(), home.gradient().id(), new Served(Set.of(), Set.of(fern.id())));
        log(home.basking());
        log(home.shade());
        long between = log(home.gradient());
        assertThat(readings.judged(site.id(), between).get(0).state()).isEmpty();
        assertThat(species(between)).containsExactly(Optional.of(shy.id()));
    }

    private AnimalFacts arrived(String name) {
        AnimalFacts animal = animals.add(site.id(), new NewAnimal("2026-" + name, name, shy.id()));
        animals.move(site.id(), new Arrival(animal.id(), home.enclosureId(), minutesAgo(30), keeper.personId()));
        return animal;
    }

    private void serve(AnimalFacts animal) {
        enclosures.serve(site.id(), home.basking().id(), new Served(Set.of(), Set.of(animal.id())));
    }

    private long order(AnimalFacts animal) {
        LocalDate week = LocalDate.ofInstant(clock.instant(), site.timeZone()).plusDays(7);
        return ordering.place(
                site.id(),
                new NewOrder(
                        animal.id(),
                        new Ordered.Cap(0.5),
                        "eyes shut",
                        Optional.empty(),
                        week,
                        UUID.randomUUID(),
                        keeper.personId()));
    }

    private List<Optional<Long>> species(long reading) {
        return readings.judged(site.id(), reading).stream()
                .map(view -> view.reading().speciesId())
                .toList();
    }

    private long log(PointFacts point) {
        VisitPlace place = new VisitPlace(visit, point.enclosureId(), point.id());
        long meter = collection.meter(site, Quantity.UV_INDEX).id();
        return logging.log(
                Visitor.of(keeper), new Entry(UUID.randomUUID(), place, meter, 1.0, clock.instant(), Optional.empty()));
    }

    private Instant minutesAgo(int minutes) {
        return clock.instant().minus(Duration.ofMinutes(minutes));
    }
}
