package dapple.practice;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.practice.Sign.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Days are counted from the first; every history is worked by hand. */
class DoubtingTest {
    private static final Instant FIRST = Instant.parse("2026-03-02T09:00:00Z");

    private static final List<Kind> KINDS = List.of(Kind.values());

    @Test
    void aMeterThatNeverFellIsNotInDoubt() {
        assertThat(doubts(sign(1, Kind.DARK_GOOD), sign(8, Kind.DARK_BAD))).isEmpty();
    }

    @Test
    void readingsSinceTheLastGoodCheckAreInDoubt() {
        Doubt doubt = only(sign(1, Kind.DARK_GOOD), sign(8, Kind.DARK_GOOD), sign(10, Kind.DROPPED));
        assertThat(covered(doubt)).containsExactly(8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20);
    }

    @Test
    void aCheckThatFailedIsNoGoodOne() {
        Doubt doubt = only(sign(1, Kind.DARK_GOOD), sign(8, Kind.DARK_BAD), sign(10, Kind.DROPPED));
        assertThat(doubt.from()).contains(day(1));
    }

    @Test
    void withoutAnyGoodCheckAllBeforeIsInDoubt() {
        assertThat(covered(only(sign(10, Kind.DROPPED)))).hasSize(21);
    }

    @Test
    void theDayOfTheCalibrationCountsAsAGoodCheck() {
        assertThat(only(sign(5, Kind.CALIBRATED), sign(10, Kind.DROPPED)).from())
                .contains(day(5));
    }

    @Test
    void aGoodCheckClears() {
        assertThat(doubts(sign(1, Kind.DARK_GOOD), sign(10, Kind.DROPPED), sign(11, Kind.DARK_GOOD)))
                .isEmpty();
    }

    @Test
    void aFailedCheckCondemnsUntilTheMeterIsGoodAgain() {
        Doubt doubt = only(
                sign(8, Kind.DARK_GOOD), sign(10, Kind.DROPPED), sign(11, Kind.DARK_BAD), sign(14, Kind.DARK_GOOD));
        assertThat(doubt).isEqualTo(new Doubt(day(10), Optional.of(day(8)), Optional.of(day(14)), true));
    }

    @Test
    void aDarkZeroSaysNothingWhereThereWasAReferenceLamp() {
        Doubt doubt = only(
                lamp(1, Kind.LAMP_NAMED, 1),
                lamp(8, Kind.LAMP_GOOD, 1),
                sign(10, Kind.DROPPED),
                sign(11, Kind.DARK_GOOD));
        assertThat(doubt.until()).isEmpty();
    }

    @Test
    void theReferenceLampClears() {
        assertThat(doubts(
                        lamp(1, Kind.LAMP_NAMED, 1),
                        lamp(8, Kind.LAMP_GOOD, 1),
                        sign(10, Kind.DROPPED),
                        lamp(11, Kind.LAMP_GOOD, 1)))
                .isEmpty();
    }

    /** Its first value was taken by the meter that fell: it can only agree with itself. */
    @Test
    void aLampThatWasNamedAfterTheDropClearsNothing() {
        Doubt doubt = only(
                lamp(1, Kind.LAMP_NAMED, 1),
                sign(10, Kind.DROPPED),
                lamp(11, Kind.LAMP_ENDED, 1),
                lamp(11, Kind.LAMP_NAMED, 11),
                lamp(12, Kind.LAMP_GOOD, 11));
        assertThat(doubt.until()).isEmpty();
    }

    @Test
    void aSecondDropChangesNothingWhileTheFirstIsOpen() {
        assertThat(only(sign(8, Kind.DARK_GOOD), sign(10, Kind.DROPPED), sign(12, Kind.DROPPED))
                        .droppedAt())
                .isEqualTo(day(10));
    }

    @Test
    void aDropAfterAClearedOneDoubtsFromTheClearingCheckOn() {
        Doubt doubt =
                only(sign(8, Kind.DARK_GOOD), sign(10, Kind.DROPPED), sign(11, Kind.DARK_GOOD), sign(15, Kind.DROPPED));
        assertThat(doubt.from()).contains(day(11));
    }

    /** It may have been adjusted: what was read before stays unanswered. */
    @Test
    void aCalibrationEndsADoubtAndClearsNothing() {
        Doubt doubt = only(sign(8, Kind.DARK_GOOD), sign(10, Kind.DROPPED), sign(12, Kind.CALIBRATED));
        assertThat(doubt).isEqualTo(new Doubt(day(10), Optional.of(day(8)), Optional.of(day(12)), false));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    /** Whatever the history: a reading just after a good check that no open doubt stood before is trusted until the next drop. */
    @ParameterizedTest
    @MethodSource("seeds")
    void doubtsNeverOverlap(long seed) {
        List<Doubt> found = Doubting.of(history(seed));
        for (int next = 1; next < found.size(); next++) {
            Instant ended = found.get(next - 1).until().orElseThrow();
            assertThat(found.get(next).from())
                    .hasValueSatisfying(from -> assertThat(from).isAfterOrEqualTo(ended));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyDoubtCoversItsDrop(long seed) {
        assertThat(Doubting.of(history(seed))).allMatch(doubt -> doubt.covers(doubt.droppedAt()));
    }

    private static List<Sign> history(long seed) {
        Random chance = new Random(seed);
        List<Sign> signs = new ArrayList<>();
        for (int day = 1; day <= 40; day++) {
            Kind kind = KINDS.get(chance.nextInt(KINDS.size()));
            signs.add(new Sign(day(day), kind, Optional.of(day(1 + chance.nextInt(day)))));
        }
        return signs;
    }

    private static List<Integer> covered(Doubt doubt) {
        List<Integer> days = new ArrayList<>();
        for (int day = 0; day <= 20; day++) {
            if (doubt.covers(day(day))) {
                days.add(day);
            }
        }
        return days;
    }

    private static Doubt only(Sign... signs) {
        List<Doubt> found = doubts(signs);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static List<Doubt> doubts(Sign... signs) {
        return Doubting.of(List.of(signs));
    }

    private static Sign sign(int day, Kind kind) {
        return new Sign(day(day), kind, Optional.empty());
    }

    private static Sign lamp(int day, Kind kind, int since) {
        return new Sign(day(day), kind, Optional.of(day(since)));
    }

    private static Instant day(int day) {
        return FIRST.plus(Duration.ofDays(day));
    }
}
