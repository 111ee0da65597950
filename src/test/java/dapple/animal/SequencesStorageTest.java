package dapple.animal;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;

/** Whatever is entered in whatever order, late or refused: what stands on record holds together. */
@StorageTest
class SequencesStorageTest {
    private static final int STEPS = 60;
    private static final int FIRST_DAY = 100;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Animals animals;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private Counting counting;

    @Autowired
    private Moving moving;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private SpeciesFacts species;
    private Instant now;
    private List<Long> enclosures;
    private final List<Long> records = new ArrayList<>();
    private int expected;
    private int done;
    private int number;

    static Stream<Random> seeds() {
        return IntStream.range(0, 6).mapToObj(Random::new);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatStandsHoldsTogether(Random random) {
        for (int step = 0; step < STEPS; step++) {
            tryAnything(random);
        }
        assertThat(done).as("steps that were not refused").isGreaterThan(STEPS / 4);
        assertThat(total()).as("animals in all").isEqualTo(expected);
        records.forEach(record -> {
            assertCountsAreNeverNegative(record);
            assertIsInOnePlace(record);
            assertIsSomewhereOnlyWhileHere(record);
        });
    }

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        species = collection.species(site, "Epipedobates anthonyi");
        now = clock.instant();
        enclosures =
                Stream.generate(() -> collection.emptyEnclosure(site)).limit(3).toList();
        records.clear();
        for (int group = 0; group < 3; group++) {
            records.add(keeping.addGroup(site.id(), state(), 20, how(FIRST_DAY)));
        }
        records.add(keeping.add(site.id(), state(), keeper.personId()));
        expected = 61;
        done = 0;
    }

    private void tryAnything(Random random) {
        int daysAgo = random.nextInt(FIRST_DAY);
        long record = any(random, records);
        try {
            switch (random.nextInt(8)) {
                case 0 -> add(record, Happening.BIRTH, 1 + random.nextInt(5), daysAgo);
                case 1 -> add(record, Happening.DEATH, -1 - random.nextInt(5), daysAgo);
                case 2 -> add(record, Happening.TRANSFER, -1 - random.nextInt(20), daysAgo);
                case 3 -> records.add(split(record, random, daysAgo));
                case 4 -> counting.join(site.id(), record, any(random, records), how(daysAgo));
                case 5 -> withdraw(record, random);
                default -> move(record, any(random, enclosures), daysAgo);
            }
            done++;
        } catch (RefusedException refused) {
            // Nothing of it was stored, which is what the test is about.
        }
    }

    private void add(long record, Happening kind, int change, int daysAgo) {
        counting.record(site.id(), record, kind, Math.abs(change), how(daysAgo));
        expected += change;
    }

    private long split(long group, Random random, int daysAgo) {
        AnimalKind kind = random.nextBoolean() ? AnimalKind.GROUP : AnimalKind.INDIVIDUAL;
        int howMany = kind == AnimalKind.GROUP ? 1 + random.nextInt(8) : 1;
        return counting.split(site.id(), new Split(group, kind, next(), "Part", howMany), how(daysAgo));
    }

    private void move(long record, long enclosure, int daysAgo) {
        Optional<Long> from = Optional.ofNullable(
                        animals.presentStays(site.id(), List.of(record)).get(record))
                .map(StayFacts::enclosureId);
        moving.move(
                site.id(), new Move(List.of(record), from, enclosure, at(daysAgo), "for a test", keeper.personId()));
    }

    private void withdraw(long record, Random random) {
        List<StayFacts> stays = animals.staysOf(site.id(), record);
        if (!stays.isEmpty()) {
            StayFacts wrong = stays.get(random.nextInt(stays.size()));
            Optional<Long> instead = random.nextBoolean() ? Optional.of(any(random, enclosures)) : Optional.empty();
            moving.correct(site.id(), new StayCorrection(record, wrong.id(), instead, "wrong", keeper.personId()));
        }
    }

    private int total() {
        return animals.counts(site.id(), records, now).values().stream()
                .mapToInt(Integer::intValue)
                .sum();
    }

    private void assertCountsAreNeverNegative(long record) {
        for (int daysAgo = 0; daysAgo <= FIRST_DAY; daysAgo++) {
            Map<Long, Integer> counts = animals.counts(site.id(), List.of(record), at(daysAgo));
            assertThat(counts.get(record))
                    .as("%s, %s days ago", record, daysAgo)
                    .isNotNegative();
        }
    }

    private void assertIsInOnePlace(long record) {
        Instant end = Instant.MIN;
        for (StayFacts stay : animals.staysOf(site.id(), record)) {
            assertThat(stay.from()).as("stay %s of %s", stay.id(), record).isAfterOrEqualTo(end);
            end = stay.to().orElse(Instant.MAX);
        }
    }

    private void assertIsSomewhereOnlyWhileHere(long record) {
        for (StayFacts stay : animals.staysOf(site.id(), record)) {
            int there = animals.counts(site.id(), List.of(record), stay.from()).getOrDefault(record, 0);
            assertThat(there).as("stay %s of %s", stay.id(), record).isPositive();
        }
        boolean isSomewhere = !animals.presentStays(site.id(), List.of(record)).isEmpty();
        assertThat(isSomewhere && !animals.details(site.id(), record).isHere()).isFalse();
        animals.details(site.id(), record)
                .end()
                .ifPresent(end -> assertThat(animals.counts(site.id(), List.of(record), end.at()))
                        .as("count of %s at its end", record)
                        .containsEntry(record, 0));
    }

    private static long any(Random random, List<Long> some) {
        return some.get(random.nextInt(some.size()));
    }

    private AnimalState state() {
        return AnimalState.of(new NewAnimal(next(), "Name", species.id()));
    }

    private String next() {
        number++;
        return "2026-" + number;
    }

    private Happened how(int daysAgo) {
        return new Happened(at(daysAgo), "for a test", UUID.randomUUID(), keeper.personId());
    }

    private Instant at(int daysAgo) {
        return now.minus(Duration.ofDays(daysAgo));
    }
}
