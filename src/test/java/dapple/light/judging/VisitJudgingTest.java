package dapple.light.judging;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.judging.VisitJudging.PointReading;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class VisitJudgingTest {
    private static final MeterUncertainty HAND_HELD = MeterUncertainty.ofResolution(0.1);

    /** UV zone 3 by the sunbeam method. */
    private static final Limits ZONE_3 = new Limits(new Band(2.9, 7.4), 0.29, 8.0);

    @ParameterizedTest
    @CsvSource({
        "BASKING, 4.5, ON_TARGET",
        "BASKING, 1.7, TOO_WEAK",
        "BASKING, 3.2, BORDERLINE",
        "BASKING, 7.0, BORDERLINE",
        "BASKING, 9.1, OVER_CEILING",
        "SHADE, 0.0, ON_TARGET",
        "SHADE, 0.3, BORDERLINE",
        "SHADE, 0.9, NO_SHADE",
        "SHADE, 8.2, OVER_CEILING",
        "NEAREST_REACHABLE, 5.9, ON_TARGET",
        "NEAREST_REACHABLE, 6.9, BORDERLINE",
        "NEAREST_REACHABLE, 8.0, OVER_CEILING"
    })
    void judgesAPointByItsRole(PointRole role, double uvi, State state) {
        assertThat(judged(role, uvi).state()).contains(state);
    }

    /** Worked: a reading of 7.4 at a ceiling of 7.4 with ±20 % is a harm finding at once. */
    @Test
    void isOverTheCeilingAtTheCeilingWhateverTheUncertainty() {
        Limits limits = new Limits(new Band(2.9, 7.4), 0.29, 7.4);
        assertThat(judged(PointRole.BASKING, 7.4, limits).state()).contains(State.OVER_CEILING);
    }

    /** Worked: 6.5 at a ceiling of 7.4 with ±20 % reaches to 7.8. */
    @Test
    void mayExceedTheCeilingWhenTheIntervalReachesOverIt() {
        Limits limits = new Limits(new Band(2.9, 7.4), 0.29, 7.4);
        assertThat(judged(PointRole.BASKING, 6.5, limits))
                .isEqualTo(new Judgement(Optional.of(State.BORDERLINE), true, false, false));
    }

    /** Worked: 6.0 reaches to 7.2. */
    @Test
    void staysUnderACeilingThatTheIntervalDoesNotReach() {
        assertThat(judged(PointRole.NEAREST_REACHABLE, 6.0).mayExceed()).isFalse();
    }

    @Test
    void judgesNoAnimalsTargetAtAKeepersPoint() {
        assertThat(judged(PointRole.KEEPER, 9.9)).isEqualTo(Judgement.none());
    }

    @Test
    void leavesAGradientPointOpenUntilBaskingAndShadeAreRead() {
        List<PointReading> visit = List.of(reading(1, PointRole.BASKING, 4.5), reading(2, PointRole.GRADIENT, 1.5));
        assertThat(judge(visit, 2)).isEqualTo(Judgement.none());
    }

    @ParameterizedTest
    @CsvSource({"1.5, ON_TARGET", "0.1, ON_TARGET", "4.5, ON_TARGET", "5.0, TOO_STRONG", "0.0, TOO_WEAK"})
    void judgesAGradientPointBetweenShadeAndBasking(double uvi, State state) {
        List<PointReading> visit = List.of(
                reading(1, PointRole.BASKING, 4.5),
                reading(2, PointRole.GRADIENT, uvi),
                reading(3, PointRole.SHADE, 0.1));
        assertThat(judge(visit, 2).state()).contains(state);
    }

    @Test
    void findsNoGradientWhereShadeIsNotAThirdAsBright() {
        List<PointReading> visit = List.of(reading(1, PointRole.BASKING, 0.5), reading(2, PointRole.SHADE, 0.2));
        assertThat(judge(visit, 2)).isEqualTo(new Judgement(Optional.of(State.NO_SHADE), false, false, true));
    }

    @Test
    void findsAGradientAtAFactorOfThree() {
        List<PointReading> visit = List.of(reading(1, PointRole.BASKING, 0.6), reading(2, PointRole.SHADE, 0.2));
        assertThat(judge(visit, 2).noGradient()).isFalse();
    }

    @Test
    void findsNothingWrongWithTheGradientOfADarkEnclosure() {
        List<PointReading> visit = List.of(reading(1, PointRole.BASKING, 0.0), reading(2, PointRole.SHADE, 0.0));
        assertThat(judge(visit, 2).noGradient()).isFalse();
    }

    /** Each with its own bands: basking 10,000 to 30,000, shade at most 1,000, ceiling 60,000 lx. */
    @ParameterizedTest
    @CsvSource({
        "BASKING, 20000, ON_TARGET",
        "BASKING, 8000, TOO_WEAK",
        "SHADE, 500, ON_TARGET",
        "SHADE, 2000, TOO_STRONG",
        "GRADIENT, 5, ON_TARGET",
        "NEAREST_REACHABLE, 58000, BORDERLINE",
        "GRADIENT, 60000, OVER_CEILING"
    })
    void judgesAnIlluminanceByItsOwnLimits(PointRole role, double lux, State state) {
        Limits limits = new Limits(new Band(10_000, 30_000), Band.atMost(1_000), 60_000);
        assertThat(judged(Quantity.ILLUMINANCE, role, lux, limits).state()).contains(state);
    }

    @ParameterizedTest
    @EnumSource(
            value = PointRole.class,
            names = {"SHADE", "GRADIENT", "NEAREST_REACHABLE", "KEEPER"})
    void judgesNothingWhereNothingIsAsked(PointRole role) {
        Limits baskingAlone = new Limits(new Band(38, 42), Band.OPEN, Limits.NO_CEILING);
        assertThat(judged(Quantity.SURFACE_TEMPERATURE, role, 80, baskingAlone)).isEqualTo(Judgement.none());
    }

    /** Guarded acceptance (JCGM 106:2012) of a shade of 22 to 26 °C, ±1 °C. */
    @ParameterizedTest
    @CsvSource({"24, ON_TARGET", "20, TOO_WEAK", "28, TOO_STRONG", "22.5, BORDERLINE"})
    void judgesShadeByBothEndsOfItsBand(double celsius, State state) {
        Limits limits = new Limits(Band.OPEN, new Band(22, 26), Limits.NO_CEILING);
        assertThat(judged(Quantity.SURFACE_TEMPERATURE, PointRole.SHADE, celsius, limits)
                        .state())
                .contains(state);
    }

    @Test
    void asksNoGradientOfTemperatures() {
        Limits limits = new Limits(new Band(28, 40), Band.atMost(32), 50);
        MeterUncertainty meter = MeterUncertainty.of(Quantity.SURFACE_TEMPERATURE, 0.1);
        List<PointReading> visit = List.of(
                new PointReading(1, PointRole.BASKING, meter.around(32), meter),
                new PointReading(2, PointRole.SHADE, meter.around(28), meter));
        assertThat(VisitJudging.judge(Quantity.SURFACE_TEMPERATURE, visit, limits)
                        .getOrDefault(2L, Judgement.none())
                        .noGradient())
                .isFalse();
    }

    @Test
    void leavesNothingButHarmWhileLampsArePlannedOff() {
        assertThat(Judgement.of(State.TOO_WEAK).whilePlannedOff().state()).contains(State.PLANNED_OFF);
        assertThat(Judgement.of(State.OVER_CEILING).whilePlannedOff().state()).contains(State.OVER_CEILING);
    }

    private static Judgement judged(Quantity quantity, PointRole role, double amount, Limits limits) {
        MeterUncertainty meter = MeterUncertainty.of(quantity, 0.1);
        PointReading reading = new PointReading(1, role, meter.around(quantity, amount), meter);
        return VisitJudging.judge(quantity, List.of(reading), limits).getOrDefault(1L, Judgement.none());
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void doesNotDependOnTheOrderOfReading(long seed) {
        List<PointReading> visit = randomVisit(new Random(seed));
        List<PointReading> shuffled = new ArrayList<>(visit);
        Collections.shuffle(shuffled, new Random(seed + 1));
        assertThat(VisitJudging.judge(shuffled, ZONE_3))
                .containsExactlyInAnyOrderEntriesOf(VisitJudging.judge(visit, ZONE_3));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverCallsAReadingAtOrAboveTheCeilingAnythingElse(long seed) {
        List<PointReading> visit = randomVisit(new Random(seed));
        visit.stream()
                .filter(reading -> reading.measured().amount() >= ZONE_3.ceiling())
                .forEach(reading ->
                        assertThat(judge(visit, reading.key()).state()).contains(State.OVER_CEILING));
    }

    private static List<PointReading> randomVisit(Random random) {
        List<PointReading> visit = new ArrayList<>();
        List<PointRole> roles = List.of(
                PointRole.BASKING, PointRole.BASKING, PointRole.GRADIENT, PointRole.SHADE, PointRole.NEAREST_REACHABLE);
        for (PointRole role : roles) {
            visit.add(reading(visit.size() + 1, role, Math.round(random.nextDouble() * 100) / 10.0));
        }
        return visit;
    }

    private static Judgement judged(PointRole role, double uvi) {
        return judged(role, uvi, ZONE_3);
    }

    private static Judgement judged(PointRole role, double uvi, Limits limits) {
        return VisitJudging.judge(List.of(reading(1, role, uvi)), limits).getOrDefault(1L, Judgement.none());
    }

    private static Judgement judge(List<PointReading> visit, long key) {
        return VisitJudging.judge(visit, ZONE_3).getOrDefault(key, Judgement.none());
    }

    private static PointReading reading(long key, PointRole role, double uvi) {
        return new PointReading(key, role, HAND_HELD.around(uvi), HAND_HELD);
    }
}
