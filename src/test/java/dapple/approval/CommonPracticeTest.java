package dapple.approval;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.judging.Band;
import dapple.site.SourceMark;
import dapple.species.UvZone;
import dapple.target.ZoneLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommonPracticeTest {
    /** Worked by hand: 1.25 × 3.0 = 3.75; 1.25 × 7.4 = 9.25, above the cap of 8; common practice, no source. */
    @ParameterizedTest
    @CsvSource({"3.0, 3.75", "7.4, 8", "6.4, 8", "1.0, 1.25", "0, 0"})
    void setsTheCeilingAQuarterAboveTheBaskingHighAndNeverAboveEight(double highUvi, double ceilingUvi) {
        assertThat(CommonPractice.ceiling(highUvi).band()).isEqualTo(Band.atMost(ceilingUvi));
    }

    /** Worked by hand: a tenth of 2.9 is 0.29; of 0.7, 0.07, below the least of 0.1; common practice, no source. */
    @ParameterizedTest
    @CsvSource({"2.9, 0.29", "4.5, 0.45", "0.7, 0.1", "0, 0.1"})
    void asksForShadeOfATenthAndNeverLessThanATenthOfAnIndex(double lowUvi, double shadeUvi) {
        assertThat(CommonPractice.shade(lowUvi).band()).isEqualTo(Band.atMost(shadeUvi));
    }

    @Test
    void saysThatItHasNoSource() {
        assertThat(CommonPractice.ceiling(3).mark()).isEqualTo(SourceMark.COMMON_PRACTICE);
    }

    @Test
    void servesTheZonesThatHaveLimits() {
        ZoneLimits limits = new ZoneLimits();
        assertThat(UvZone.usual())
                .hasSize(5)
                .allSatisfy(zone -> assertThat(limits.of(zone)).hasSize(3));
    }
}
