package dapple.light.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dapple.light.dose.KeeperDose.Advice;
import dapple.light.dose.KeeperDose.Hazard;
import dapple.light.spectrum.KeeperLimit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeeperDoseTest {
    private static final double EXACT = 1e-9;

    /**
     * Worked by hand from both limits [icnirp2004, directive2006]; the fourth row is sun-like light, of which 1.53 UV index hours
     * reach 30 J/m². The same table holds for the script of the page without signal.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "keeper-dose-worked.csv", useHeadersInDisplayName = true)
    void weighsEveryMinuteAgainstBothLimits(
            double uvIndex1,
            double minutes1,
            double actinicPerUviMinute1,
            double uvaPerUviMinute1,
            boolean assumed1,
            double uvIndex2,
            double minutes2,
            double actinicPerUviMinute2,
            double uvaPerUviMinute2,
            boolean assumed2,
            double uviMinutes,
            double actinic,
            double uva,
            double share,
            String binding,
            Advice advice,
            boolean assumed) {
        KeeperDose dose = KeeperDose.NONE
                .with(uvIndex1, minutes1, new Hazard(actinicPerUviMinute1, uvaPerUviMinute1, assumed1))
                .with(uvIndex2, minutes2, new Hazard(actinicPerUviMinute2, uvaPerUviMinute2, assumed2));
        assertThat(dose.uvIndexMinutes()).isCloseTo(uviMinutes, within(EXACT));
        assertThat(dose.actinicJoulesPerSquareMetre()).isCloseTo(actinic, within(EXACT));
        assertThat(dose.uvaJoulesPerSquareMetre()).isCloseTo(uva, within(EXACT));
        assertThat(dose.share()).isCloseTo(share, within(EXACT));
        assertThat(dose.binding()).isEqualTo(KeeperLimit.Binding.valueOf(binding));
        assertThat(dose.advice()).isEqualTo(advice);
        assertThat(dose.isAssumed()).isEqualTo(assumed);
    }

    @Test
    void takesTheRuleOfThumbWithoutSpectrum() {
        KeeperDose dose = KeeperDose.NONE.with(1, 36, Hazard.WITHOUT_SPECTRUM);
        assertThat(dose.share()).isCloseTo(1, within(EXACT));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoLight(double uvIndex) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> KeeperDose.NONE.with(uvIndex, 1, Hazard.WITHOUT_SPECTRUM));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoTime(double minutes) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> KeeperDose.NONE.with(1, minutes, Hazard.WITHOUT_SPECTRUM));
    }
}
