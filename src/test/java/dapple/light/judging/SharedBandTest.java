package dapple.light.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Ranges of the UV zones as in {@code shared/uv-zone-limits.csv}; what they share is worked by hand. */
class SharedBandTest {
    private static final Band SHADE_1 = new Band(0.35, 0.7);
    private static final Band SUNBEAM_2 = new Band(1.1, 3.0);
    private static final Band SUNBEAM_3 = new Band(2.9, 7.4);
    private static final Band SUNBEAM_4 = new Band(4.5, 8.0);

    @Test
    void servesAllWhereRangesOverlap() {
        assertThat(SharedBand.of(List.of(SUNBEAM_2, SUNBEAM_3)).common()).contains(new Band(2.9, 3.0));
    }

    @Test
    void servesNotAllAtOnceWhereOneRangeMissesAnother() {
        assertThat(SharedBand.of(List.of(SUNBEAM_2, SUNBEAM_3, SUNBEAM_4)).common())
                .isEmpty();
    }

    @Test
    void hasNoGapsWhereEachRangeMeetsTheNext() {
        SharedBand shared = SharedBand.of(List.of(SUNBEAM_4, SUNBEAM_2, SUNBEAM_3));
        assertThat(shared.served()).containsExactly(new Band(1.1, 8.0));
        assertThat(shared.gaps()).isEmpty();
    }

    @Test
    void servesNobodyBetweenRanges() {
        assertThat(SharedBand.of(List.of(SUNBEAM_4, SHADE_1, SUNBEAM_2)).gaps())
                .containsExactly(new Band(0.7, 1.1), new Band(3.0, 4.5));
    }

    @Test
    void servesBothWhereRangesTouch() {
        assertThat(SharedBand.of(List.of(new Band(1, 2), new Band(2, 3))).common())
                .contains(new Band(2, 2));
    }

    @Test
    void keepsARangeThatLiesInAnother() {
        SharedBand shared = SharedBand.of(List.of(new Band(1, 8), new Band(2, 3)));
        assertThat(shared.served()).containsExactly(new Band(1, 8));
        assertThat(shared.common()).contains(new Band(2, 3));
    }

    @Test
    void isTheRangeItselfForOne() {
        assertThat(SharedBand.of(List.of(SUNBEAM_3)).common()).contains(SUNBEAM_3);
    }

    @Test
    void needsARange() {
        assertThatThrownBy(() -> SharedBand.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void hasNothingInCommonAboveACeiling() {
        assertThat(SharedBand.of(List.of(SUNBEAM_4)).commonBelow(3.75)).isEmpty();
    }

    @Test
    void endsAtACeiling() {
        assertThat(SharedBand.of(List.of(SUNBEAM_3)).commonBelow(3.75)).contains(new Band(2.9, 3.75));
    }

    static Stream<List<Band>> seeded() {
        Random chance = new Random(20261126);
        return IntStream.range(0, 50).mapToObj(run -> {
            List<Band> bands = new ArrayList<>();
            for (int animal = 0; animal < 4; animal++) {
                double low = chance.nextDouble() * 8;
                bands.add(new Band(low, low + chance.nextDouble() * 2));
            }
            return bands;
        });
    }

    @ParameterizedTest
    @MethodSource("seeded")
    void doesNotDependOnTheOrder(List<Band> bands) {
        List<Band> shuffled = new ArrayList<>(bands);
        Collections.shuffle(shuffled, new Random(1));
        assertThat(SharedBand.of(shuffled)).isEqualTo(SharedBand.of(bands));
    }

    @ParameterizedTest
    @MethodSource("seeded")
    void leavesNobodyInTheMiddleOfAGap(List<Band> bands) {
        assertThat(SharedBand.of(bands).gaps())
                .allSatisfy(gap -> assertThat(bands).noneMatch(band -> isInside(band, (gap.low() + gap.high()) / 2)));
    }

    @ParameterizedTest
    @MethodSource("seeded")
    void servesEverybodyInTheMiddleOfWhatIsCommon(List<Band> bands) {
        assertThat(SharedBand.of(bands).common().stream().toList())
                .allSatisfy(common ->
                        assertThat(bands).allMatch(band -> isInside(band, (common.low() + common.high()) / 2)));
    }

    private static boolean isInside(Band band, double amount) {
        return amount >= band.low() && amount <= band.high();
    }
}
