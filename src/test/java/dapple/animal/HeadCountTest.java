package dapple.animal;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.animal.HeadCount.Step;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class HeadCountTest {
    private static final Instant MARCH = Instant.parse("2026-03-01T12:00:00Z");

    /** A month counted by hand: 12 come, 2 die, 5 hatch, 14 are counted (one was missed), 1 leaves. */
    private static final HeadCount A_MONTH = new HeadCount(
            0,
            List.of(
                    step(Happening.ENTERED, 1, 12),
                    step(Happening.DEATH, 5, -2),
                    step(Happening.BIRTH, 10, 5),
                    step(Happening.RECOUNT, 20, 14),
                    step(Happening.SPLIT_OFF, 25, -1)));

    private static Step step(Happening kind, int dayOfMarch, int number) {
        return new Step(kind, at(dayOfMarch), number);
    }

    private static Instant at(int dayOfMarch) {
        return MARCH.plus(Duration.ofDays(dayOfMarch - 1L));
    }

    @ParameterizedTest
    @CsvSource({"1, 12", "4, 12", "5, 10", "10, 15", "19, 15", "20, 14", "25, 13", "31, 13"})
    void countsAsByHand(int dayOfMarch, int count) {
        assertThat(A_MONTH.at(at(dayOfMarch))).isEqualTo(count);
    }

    @Test
    void tellsFromWhenEachCountHeldTheNewestFirst() {
        assertThat(A_MONTH.course())
                .containsExactly(
                        new Counted(Optional.of(at(25)), 13),
                        new Counted(Optional.of(at(20)), 14),
                        new Counted(Optional.of(at(10)), 15),
                        new Counted(Optional.of(at(5)), 10),
                        new Counted(Optional.of(at(1)), 12));
    }

    @Test
    void ofStepsAtOneInstantTheLastCountIsTold() {
        HeadCount course = new HeadCount(3, List.of(step(Happening.BIRTH, 2, 2), step(Happening.DEATH, 2, -1)));
        assertThat(course.course())
                .containsExactly(new Counted(Optional.of(at(2)), 4), new Counted(Optional.empty(), 3));
    }

    @Test
    void holdsNobodyBeforeItBegins() {
        assertThat(A_MONTH.at(MARCH.minusSeconds(1))).isZero();
    }

    @Test
    void aRecountHidesWhatIsEnteredLateBeforeIt() {
        HeadCount late = A_MONTH.with(step(Happening.BIRTH, 12, 3));
        assertThat(late.at(at(25))).isEqualTo(13);
    }

    @Test
    void aLateBirthCountsUntilTheRecount() {
        assertThat(A_MONTH.with(step(Happening.BIRTH, 12, 3)).at(at(19))).isEqualTo(18);
    }

    @Test
    void neverFallsBelowZero() {
        assertThat(A_MONTH.with(step(Happening.DEATH, 6, -11)).isPossible()).isFalse();
    }

    @Test
    void isNotWithoutAnimalsWhileItGoesOn() {
        assertThat(A_MONTH.with(step(Happening.DEATH, 6, -10)).isPossible()).isFalse();
    }

    @Test
    void mayEndWithTheLastDeath() {
        assertThat(A_MONTH.with(step(Happening.DEATH, 26, -13)).isPossible()).isTrue();
    }

    @Test
    void beginsWithNoBirth() {
        assertThat(A_MONTH.with(new Step(Happening.BIRTH, MARCH.minusSeconds(1), 1))
                        .isPossible())
                .isFalse();
    }

    @Test
    void mayReturnAfterItsEnd() {
        HeadCount ended = A_MONTH.with(step(Happening.TRANSFER, 26, -13));
        assertThat(ended.with(step(Happening.RETURNED, 28, 13)).isPossible()).isTrue();
    }

    @Test
    void takesNoBirthBetweenItsEndAndItsReturn() {
        HeadCount returned = A_MONTH.with(step(Happening.TRANSFER, 26, -13)).with(step(Happening.RETURNED, 28, 13));
        assertThat(returned.with(step(Happening.BIRTH, 27, 1)).isPossible()).isFalse();
    }

    @Test
    void oneAnimalMayDieOnce() {
        HeadCount one = new HeadCount(1, List.of(step(Happening.DEATH, 3, -1)));
        assertThat(one.with(step(Happening.DEATH, 4, -1)).isPossible()).isFalse();
    }

    static Stream<Random> seeds() {
        return IntStream.range(0, 50).mapToObj(Random::new);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isTheSameInWhateverOrderItWasEntered(Random random) {
        List<Step> steps = new ArrayList<>();
        steps.add(step(Happening.ENTERED, 1, 50));
        for (int day = 2; day <= 31; day++) {
            steps.add(any(random, day));
        }
        HeadCount inOrder = new HeadCount(0, steps);
        Collections.shuffle(steps, random);
        HeadCount late = new HeadCount(0, List.of());
        for (Step step : steps) {
            late = late.with(step);
        }
        assertThat(counts(late)).isEqualTo(counts(inOrder));
    }

    private static Step any(Random random, int day) {
        return switch (random.nextInt(3)) {
            case 0 -> step(Happening.BIRTH, day, 1 + random.nextInt(9));
            case 1 -> step(Happening.DEATH, day, -1 - random.nextInt(3));
            default -> step(Happening.RECOUNT, day, 1 + random.nextInt(60));
        };
    }

    private static List<Integer> counts(HeadCount count) {
        return IntStream.rangeClosed(1, 31)
                .map(day -> count.at(at(day)))
                .boxed()
                .toList();
    }
}
