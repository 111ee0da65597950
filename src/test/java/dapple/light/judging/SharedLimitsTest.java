package dapple.light.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits of the UV zones as in {@code shared/uv-zone-limits.csv}; what they share is worked by hand. */
class SharedLimitsTest {
    private static final Limits SHADE_2 = new Limits(new Band(0.7, 1.0), 0.1, 3.0);
    private static final Limits SUNBEAM_2 = new Limits(new Band(1.1, 3.0), 0.11, 3.75);
    private static final Limits SUNBEAM_3 = new Limits(new Band(2.9, 7.4), 0.29, 8.0);

    @Test
    void keepToTheDarkestShade() {
        assertThat(SharedLimits.of(List.of(SUNBEAM_3, SUNBEAM_2)).shadeHigh()).isEqualTo(0.11);
    }

    @Test
    void keepToTheLowestCeiling() {
        assertThat(SharedLimits.of(List.of(SUNBEAM_3, SUNBEAM_2)).ceiling()).isEqualTo(3.75);
    }

    @Test
    void letAllBaskWhereRangesOverlapBelowTheCeiling() {
        assertThat(SharedLimits.of(List.of(SUNBEAM_2, SUNBEAM_3)).baskingForAll())
                .contains(new Band(2.9, 3.0));
    }

    @Test
    void findNoPointForAllWhereRangesMiss() {
        assertThat(SharedLimits.of(List.of(SHADE_2, SUNBEAM_3)).baskingForAll()).isEmpty();
    }

    @Test
    void warnWhereOneBasksAboveTheCeilingOfAnother() {
        assertThat(SharedLimits.of(List.of(SHADE_2, SUNBEAM_3)).isBaskingOverACeiling())
                .isTrue();
    }

    @Test
    void doNotWarnWhereEveryRangeIsBelowEveryCeiling() {
        assertThat(SharedLimits.of(List.of(SHADE_2, SHADE_2)).isBaskingOverACeiling())
                .isFalse();
    }
}
