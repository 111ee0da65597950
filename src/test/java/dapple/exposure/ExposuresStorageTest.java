package dapple.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalKeeping;
import dapple.animal.AnimalKind;
import dapple.animal.AnimalState;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.Counting;
import dapple.animal.Happened;
import dapple.animal.NewAnimal;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.animal.Sex;
import dapple.animal.Split;
import dapple.enclosure.Enclosures;
import dapple.enclosure.Served;
import dapple.exposure.Fortnight.Kept;
import dapple.light.dose.Certainty;
import dapple.light.dose.DayOfLight;
import dapple.reading.JudgedReading;
import dapple.testing.StorageTest;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class ExposuresStorageTest {
    private static final Period FORTNIGHT = new Period(LocalDate.of(2026, 3, 16), LocalDate.of(2026, 3, 29));

    @Autowired
    private Fortnight fortnight;

    @Autowired
    private Exposures exposures;

    @Autowired
    private Animals animals;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private Counting counting;

    @Autowired
    private Enclosures enclosures;

    @Test
    void whatLeftAGroupHadTheLightOfTheGroupBefore() {
        Kept kept = fortnight.kept();
        long group = group(kept);
        fortnight.hang(kept);
        fortnight.read(kept, "2026-03-16T09:00", 4.0, 0.5);
        fortnight.read(kept, "2026-03-23T09:00", 4.0, 0.5);
        long leaving = counting.split(
                kept.site().id(),
                new Split(group, AnimalKind.INDIVIDUAL, "2026-0002", "Leaving", 1),
                how(kept, Fortnight.at("2026-03-27T12:00")));
        assertThat(of(kept, leaving, FORTNIGHT).sum().days().doseDays()).isEqualTo(8);
        assertThat(of(kept, leaving, FORTNIGHT).readings()).hasSize(4);
    }

    @Test
    void readingsAtThePointsOfAnotherAreNoneOfItsOwn() {
        Kept kept = fortnight.lived();
        long mate = animals.add(
                        kept.site().id(),
                        new NewAnimal("2026-0008", "Mate", kept.species().id()))
                .id();
        animals.move(
                kept.site().id(),
                new Arrival(
                        mate,
                        kept.enclosure(),
                        Fortnight.at("2026-01-01T12:00"),
                        kept.person().personId()));
        assertThat(of(kept, mate, FORTNIGHT).readings()).hasSize(6);
        enclosures.serve(kept.site().id(), kept.basking().id(), new Served(Set.of(), Set.of(kept.animal())));
        assertThat(of(kept, kept.animal(), FORTNIGHT).readings()).hasSize(6);
        assertThat(of(kept, mate, FORTNIGHT).readings())
                .hasSize(3)
                .allSatisfy(reading ->
                        assertThat(reading.pointId()).isEqualTo(kept.shade().id()));
    }

    @Test
    void readingsBeyondThePeriodTellOfItsDays() {
        Kept kept = fortnight.lived();
        LocalDate day = LocalDate.of(2026, 3, 19);
        assertThat(of(kept, kept.animal(), new Period(day, day)).days())
                .extracting(DayOfLight::certainty)
                .containsExactly(Certainty.CARRIED);
    }

    @Test
    void aDayIsTheSameInEveryPeriod() {
        Kept kept = fortnight.lived();
        LocalDate day = LocalDate.of(2026, 3, 19);
        assertThat(of(kept, kept.animal(), FORTNIGHT).days())
                .containsAll(of(kept, kept.animal(), new Period(day, day)).days());
    }

    @Test
    void whatWasReadBeforeItCameTellsNothing() {
        Kept kept = fortnight.lived();
        long later = animals.add(
                        kept.site().id(),
                        new NewAnimal("2026-0009", "Later", kept.species().id()))
                .id();
        animals.move(
                kept.site().id(),
                new Arrival(
                        later,
                        kept.enclosure(),
                        Fortnight.at("2026-03-25T09:00"),
                        kept.person().personId()));
        assertThat(of(kept, later, FORTNIGHT).readings())
                .extracting(JudgedReading::takenAt)
                .containsOnly(Fortnight.at("2026-03-29T09:00"));
    }

    private Exposure of(Kept kept, long animal, Period period) {
        return exposures.of(kept.person(), animals.historyOf(kept.site().id(), animal), period);
    }

    private long group(Kept kept) {
        AnimalFacts one = animals.get(kept.site().id(), kept.animal());
        AnimalState state = new AnimalState(
                "2026-0001",
                "Group",
                one.speciesId(),
                Sex.UNKNOWN,
                Optional.empty(),
                Pigment.NORMAL,
                Reach.EVERYWHERE,
                "");
        long group = keeping.addGroup(kept.site().id(), state, 5, how(kept, Fortnight.at("2026-01-02T09:00")));
        animals.move(
                kept.site().id(),
                new Arrival(
                        group,
                        kept.enclosure(),
                        Fortnight.at("2026-01-02T12:00"),
                        kept.person().personId()));
        return group;
    }

    private static Happened how(Kept kept, Instant at) {
        return new Happened(at, "for a test", UUID.randomUUID(), kept.person().personId());
    }
}
