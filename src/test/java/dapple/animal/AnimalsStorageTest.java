package dapple.animal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class AnimalsStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Animals animals;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn mover;
    private Home home;
    private Home elsewhere;
    private Instant now;

    @BeforeEach
    void furnish() {
        site = collection.site();
        mover = collection.person(site, Role.SUPERVISOR);
        SpeciesFacts species = collection.species(site, "Testudo hermanni");
        home = collection.home(site, mover, species);
        elsewhere = collection.home(site, mover, species);
        now = clock.instant();
    }

    @Test
    void endsTheOldStayWhereTheNewOneBegins() {
        move(elsewhere, now);
        List<StayFacts> stays = animals.staysOf(site.id(), home.animal().id());
        assertThat(stays).extracting(StayFacts::to).containsExactly(Optional.of(now), Optional.empty());
    }

    @Test
    void isInTheNewPlaceFromTheInstantOfTheMove() {
        move(elsewhere, now);
        assertThat(animals.inEnclosure(site.id(), elsewhere.enclosureId(), now)).contains(home.animal());
    }

    @Test
    void isInTheOldPlaceUntilJustBeforeTheMove() {
        move(elsewhere, now);
        assertThat(animals.inEnclosure(site.id(), home.enclosureId(), now.minusMillis(1)))
                .contains(home.animal());
    }

    @Test
    void isInTheOldPlaceNoMoreAtTheInstantOfTheMove() {
        move(elsewhere, now);
        assertThat(animals.inEnclosure(site.id(), home.enclosureId(), now)).isEmpty();
    }

    @Test
    void refusesAMoveBeforeTheLastOne() {
        assertThatThrownBy(() -> move(elsewhere, now.minus(Duration.ofDays(1)))).isInstanceOf(ConflictException.class);
    }

    @Test
    void refusesAnEnclosureOfAnotherSite() {
        SiteFacts otherSite = collection.site();
        Home abroad = collection.home(
                otherSite, collection.person(otherSite, Role.SUPERVISOR), collection.species(otherSite, "Agama agama"));
        assertThatThrownBy(() -> move(abroad, now)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void keepsAnAnimalInOnePlaceWhenTwoPeopleMoveItAtOnce() {
        Together.run(() -> move(elsewhere, now), () -> move(home, now.plusSeconds(1)));
        List<StayFacts> open = animals.staysOf(site.id(), home.animal().id()).stream()
                .filter(stay -> stay.to().isEmpty())
                .toList();
        assertThat(open).hasSize(1);
    }

    private void move(Home to, Instant at) {
        animals.move(site.id(), new Arrival(home.animal().id(), to.enclosureId(), at, mover.personId()));
    }
}
