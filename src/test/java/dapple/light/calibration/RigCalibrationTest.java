package dapple.light.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.calibration.FittedRig.Factor;
import dapple.light.calibration.FittedRig.Part;
import dapple.light.calibration.RigReading.ByMeter;
import dapple.light.quantity.Interval;
import dapple.light.uncertainty.StandardUncertainty;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RigCalibrationTest {
    /** ln f is straight in the amount to second order only: (5 %)²/2 of what is looked for. */
    private static final double STRAIGHT = 0.002;

    private static final Interval USUAL = new Interval(0.8, 1.25);
    private static final ByMeter EXACT = new ByMeter("M1", 0);

    /**
     * Worked by hand, the weighted mean of two statements [jcgm100]: 0 ± 4 % and ln(1.05) = 4.88 % ± 3 % give
     * 4.88 · 1/9/(1/9 + 1/16) = 3.12 %.
     */
    @Test
    void aReadingAndAStatementMeetByTheirWeights() {
        FittedRig fitted = fit(List.of(0.04), List.of(), reading("P1", 4.2, 0.03, List.of(4.0), List.of(List.of())));
        assertThat(Math.log(fitted.lamps().get(0).value())).isCloseTo(0.0312, within(STRAIGHT));
    }

    /** By hand: 1/√(1/9 + 1/16) = 2.4 %, times √1.053 for Huber's weights. */
    @Test
    void theUncertaintyIsThatOfTheWeightedMean() {
        FittedRig fitted = fit(List.of(0.04), List.of(), reading("P1", 4.2, 0.03, List.of(4.0), List.of(List.of())));
        assertThat(fitted.lamps().get(0).relative()).isCloseTo(0.024 * Math.sqrt(1.053), within(1e-4));
    }

    /** What all readings of a meter share does not shrink with their number. */
    @Test
    void manyReadingsOfOneMeterKeepItsOwnUncertainty() {
        List<RigReading> readings = new ArrayList<>();
        for (int number = 0; number < 100; number++) {
            readings.add(new RigReading(
                    "P" + number,
                    new ByMeter("M1", 0.08),
                    4,
                    StandardUncertainty.relative(0.06),
                    new SeenLight(List.of(4.0), List.of(List.of()), 0)));
        }
        FittedRig fitted =
                (FittedRig) RigCalibration.of(new RigTask(List.of(new RigTask.Stated("L1", 1)), List.of(), readings));
        assertThat(fitted.lamps().get(0).relative()).isBetween(0.08, 0.09);
    }

    @Test
    void lampsThatFallTogetherEverywhereAreNotTold() {
        FittedRig fitted = fit(
                List.of(0.1, 0.1),
                List.of(),
                reading("P1", 4, 0.05, List.of(2.0, 2.0), List.of(List.of(), List.of())),
                reading("P2", 2, 0.05, List.of(1.0, 1.0), List.of(List.of(), List.of())));
        assertThat(fitted.lamps()).extracting(Factor::isTold).containsExactly(false, false);
    }

    @Test
    void lampsWithAPointEachAreTold() {
        FittedRig fitted = fit(
                List.of(0.1, 0.1),
                List.of(),
                reading("P1", 4, 0.05, List.of(3.8, 0.2), List.of(List.of(), List.of())),
                reading("P2", 2, 0.05, List.of(0.1, 1.9), List.of(List.of(), List.of())));
        assertThat(fitted.lamps()).extracting(Factor::isTold).containsExactly(true, true);
    }

    @Test
    void aCoverOverEverythingIsNotToldFromItsLamp() {
        FittedRig fitted = fit(List.of(0.1), List.of(0.1), reading("P1", 4, 0.05, List.of(4.0), List.of(List.of(1.0))));
        assertThat(fitted.covers().get(0).isTold()).isFalse();
        assertThat(fitted.lamps().get(0).isTold()).isTrue();
    }

    /** With and without it by one meter in one place, nearly exact: what passes is their ratio, 0.8 over 1. */
    @Test
    void aCoverThatWasTakenOffOnceIsTold() {
        FittedRig fitted = fit(
                List.of(0.5),
                List.of(0.5),
                reading("P1", 3.2, 0.001, List.of(4.0), List.of(List.of(1.0))),
                reading("P1", 4.0, 0.001, List.of(4.0), List.of(List.of(0.0))));
        assertThat(fitted.covers().get(0).value()).isCloseTo(0.8, within(STRAIGHT));
        assertThat(fitted.covers().get(0).isTold()).isTrue();
    }

    @Test
    void onePointFarFromAllOthersIsDoubted() {
        List<RigReading> readings = new ArrayList<>();
        for (int number = 0; number < 6; number++) {
            readings.add(reading("P" + number, number == 2 ? 8 : 4, 0.06, List.of(4.0), List.of(List.of())));
        }
        FittedRig fitted =
                (FittedRig) RigCalibration.of(new RigTask(List.of(new RigTask.Stated("L1", 0.1)), List.of(), readings));
        assertThat(fitted.doubts(USUAL)).first().satisfies(doubt -> {
            assertThat(doubt.part()).isEqualTo(Part.POINT);
            assertThat(doubt.name()).isEqualTo("P2");
            assertThat(doubt.isMore()).isTrue();
        });
    }

    @Test
    void aLampFarFromItsStatementIsDoubted() {
        FittedRig fitted = fit(
                List.of(0.1, 0.1),
                List.of(),
                reading("P1", 1.6, 0.05, List.of(4.0, 0.0), List.of(List.of(), List.of())),
                reading("P2", 1.2, 0.05, List.of(3.0, 0.0), List.of(List.of(), List.of())),
                reading("P3", 4, 0.05, List.of(0.0, 4.0), List.of(List.of(), List.of())));
        assertThat(fitted.doubts(USUAL))
                .isNotEmpty()
                .allSatisfy(doubt -> assertThat(doubt.isMore()).isFalse());
    }

    @Test
    void lightThatIsReadInTheDarkHasNoFactor() {
        FittedRig fitted = fit(
                List.of(0.1),
                List.of(),
                reading("P1", 4, 0.05, List.of(4.0), List.of(List.of())),
                reading("P2", 4, 0.05, List.of(4.0), List.of(List.of())),
                reading("P3", 0.9, 0.05, List.of(0.0), List.of(List.of())));
        assertThat(fitted.doubts(USUAL)).first().satisfies(doubt -> {
            assertThat(doubt.name()).isEqualTo("P3");
            assertThat(doubt.isInTheDark()).isTrue();
        });
    }

    @Test
    void aReadingInTheDarkIsTaken() {
        FittedRig fitted = fit(
                List.of(0.1),
                List.of(),
                reading("P1", 4, 0.05, List.of(4.0), List.of(List.of())),
                reading("P2", 0, 0.05, List.of(0.0), List.of(List.of())));
        assertThat(fitted.doubts(USUAL)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, Double.POSITIVE_INFINITY})
    void aReadingMustBeANumberOfLight(double value) {
        assertThatThrownBy(() -> reading("P1", value, 0.05, List.of(4.0), List.of(List.of())))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aTaskNeedsAReading() {
        assertThatThrownBy(() -> new RigTask(List.of(new RigTask.Stated("L1", 0.1)), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static RigReading reading(
            String point, double value, double relative, List<Double> byLamp, List<List<Double>> through) {
        StandardUncertainty own = new StandardUncertainty(relative, 0.001);
        return new RigReading(point, EXACT, value, own, new SeenLight(byLamp, through, 0));
    }

    private static FittedRig fit(List<Double> lamps, List<Double> covers, RigReading... readings) {
        List<RigTask.Stated> stated = new ArrayList<>();
        lamps.forEach(relative -> stated.add(new RigTask.Stated("L" + stated.size(), relative)));
        List<RigTask.Stated> over = covers.stream()
                .map(relative -> new RigTask.Stated("mesh", relative))
                .toList();
        return (FittedRig) RigCalibration.of(new RigTask(stated, over, List.of(readings)));
    }
}
