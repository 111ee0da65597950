package dapple.light.dose;

import static dapple.light.dose.Histories.JUNE;
import static dapple.light.dose.Histories.always;
import static dapple.light.dose.Histories.noon;
import static dapple.light.dose.Histories.readOn;
import static dapple.light.dose.Histories.reading;
import static dapple.light.dose.Histories.underLamps;
import static dapple.light.dose.Histories.undisturbed;
import static dapple.light.dose.Histories.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dapple.light.dose.DoseOfDay.Missing;
import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class LightHistoryTest {
    /** Sums of a few products of doubles. */
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @CsvFileSource(resources = "days-worked.csv", useHeadersInDisplayName = true)
    void agreesWithDaysWorkedByHand(
            LocalDate date,
            LocalTime on,
            LocalTime off,
            double basking,
            @Nullable Double gradient,
            double shade,
            double litHours,
            double lowestUviHours,
            double bestUviHours,
            double highestUviHours,
            double bestJoulesPerSquareMetre,
            double bestSed) {
        Instant at = Histories.at(date, LocalTime.NOON);
        List<PointReading> readings =
                new ArrayList<>(List.of(reading(at, PointRole.BASKING, basking), reading(at, PointRole.SHADE, shade)));
        Optional.ofNullable(gradient).ifPresent(index -> readings.add(reading(at, PointRole.GRADIENT, index)));

        DayOfLight day = Histories.of(List.of(underLamps(always())), Histories.lampsOn(new Timer(on, off)), readings)
                .on(date);

        DoseRange dose = dose(day);
        assertThat(day.lit().orElseThrow().toSeconds() / 3600.0).isEqualTo(litHours, within(ROUNDING));
        assertThat(new double[] {
                    dose.lowest().uviHours(),
                    dose.best().uviHours(),
                    dose.highest().uviHours(),
                    dose.best().joulesPerSquareMetre(),
                    dose.best().sed()
                })
                .containsExactly(
                        new double[] {lowestUviHours, bestUviHours, highestUviHours, bestJoulesPerSquareMetre, bestSed},
                        within(ROUNDING));
    }

    @Test
    void aDayTakesTheMedianOfItsReadings() {
        PointReading odd = reading(noon(3).plusSeconds(60), PointRole.BASKING, 9);
        PointReading third = reading(noon(3).plusSeconds(90), PointRole.BASKING, 4);

        UvIndexOfDay basking = basking(undisturbed(readOn(3, 3, 0), List.of(odd, third)), 3);

        assertThat(basking).isEqualTo(new UvIndexOfDay.Measured(third.index(), 3));
    }

    @Test
    void betweenTwoReadingsTheMedianIsTheirMean() {
        PointReading second = reading(noon(3).plusSeconds(60), PointRole.BASKING, 4);

        assertThat(index(basking(undisturbed(readOn(3, 3, 0), List.of(second)), 3)))
                .isEqualTo(3.5, within(ROUNDING));
    }

    @Test
    void aDayBetweenLiesOnTheStraightLine() {
        // 2 on the 1st, 3 on the 11th: 2.3 on the 4th
        assertThat(index(basking(undisturbed(readOn(1, 2, 0), readOn(11, 3, 0)), 4)))
                .isEqualTo(2.3, within(ROUNDING));
    }

    @Test
    void aCarriedDaySaysBetweenWhichReadings() {
        assertThat(basking(undisturbed(readOn(1, 2, 0), readOn(11, 3, 0)), 4))
                .isInstanceOfSatisfying(
                        UvIndexOfDay.Carried.class,
                        carried -> assertThat(List.of(carried.before(), carried.after()))
                                .containsExactly(JUNE, JUNE.withDayOfMonth(11)));
    }

    @Test
    void theIntervalIsCarriedToo() {
        MeasuredAmount between = basking(undisturbed(readOn(1, 2, 0), readOn(11, 3, 0)), 6)
                .index()
                .orElseThrow();

        // half way between 1.6 to 2.4 and 2.4 to 3.6
        assertThat(new double[] {between.interval().low(), between.interval().high()})
                .containsExactly(new double[] {2.0, 3.0}, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({"15, CARRIED", "16, UNKNOWN"})
    void readingsTellOfTheDaysBetweenWhenAtMostFourteenDaysApart(int secondDay, Certainty certainty) {
        assertThat(undisturbed(readOn(1, 2, 0), readOn(secondDay, 2, 0))
                        .on(JUNE.withDayOfMonth(8))
                        .certainty())
                .isEqualTo(certainty);
    }

    @ParameterizedTest
    @CsvSource({"1", "12"})
    void nothingIsCarriedBeyondTheFirstAndTheLastReading(int day) {
        assertThat(dose(undisturbed(readOn(2, 2, 0), readOn(11, 2, 0)), day))
                .isEqualTo(new DoseOfDay.Unknown(Missing.BASKING_INDEX));
    }

    @ParameterizedTest
    @CsvSource({"3, UNKNOWN", "5, UNKNOWN", "7, CARRIED"})
    void nothingIsCarriedAcrossAChange(int day, Certainty certainty) {
        List<Spell> spells = List.of(underLamps(new Span(Instant.EPOCH, noon(4))), underLamps(Span.since(noon(4))));

        LightHistory history = with(spells, readOn(1, 2, 0), readOn(6, 2, 0), readOn(8, 2, 0));

        assertThat(history.on(JUNE.withDayOfMonth(day)).certainty()).isEqualTo(certainty);
    }

    @Test
    void onTheDayOfAChangeEachPartTakesItsOwnReadings() {
        // lit from 6 to 12: 3 h at 2.0, then 3 h at 4.0; half of the assumed 3 h in each, the rest at (B + S)/2
        Instant nine = Histories.at(JUNE, LocalTime.of(9, 0));
        List<Spell> spells = List.of(underLamps(new Span(Instant.EPOCH, nine)), underLamps(Span.since(nine)));
        List<PointReading> readings = Stream.of(nine.minusSeconds(60), nine)
                .flatMap(at -> Stream.of(
                        reading(at, PointRole.BASKING, at.equals(nine) ? 4 : 2), reading(at, PointRole.SHADE, 0)))
                .toList();

        DoseRange dose = dose(with(spells, readings).on(JUNE));

        assertThat(new double[] {dose.best().uviHours(), dose.highest().uviHours()})
                .containsExactly(new double[] {1.5 * 2 + 1.5 * 1 + 1.5 * 4 + 1.5 * 2, 3 * 2 + 3 * 4}, within(ROUNDING));
    }

    @Test
    void aChangeWhileTheLampsAreOffLeavesTheDayWhole() {
        Instant evening = Histories.at(JUNE, LocalTime.of(19, 0));
        List<Spell> spells = List.of(underLamps(new Span(Instant.EPOCH, evening)), underLamps(Span.since(evening)));

        assertThat(with(spells, readOn(1, 2, 0)).on(JUNE).certainty()).isEqualTo(Certainty.MEASURED);
    }

    @Test
    void whatIsPlannedOffHasNoDoseAndSaysSo() {
        DayOfLight day = with(List.of(new Spell(always(), Circumstance.PLANNED_OFF)), readOn(1, 2, 0))
                .on(JUNE);

        assertThat(List.of(day.certainty(), day.judgement(), day.dose()))
                .containsExactly(Certainty.PLANNED_OFF, DayJudgement.PLANNED_OFF, new DoseOfDay.Known(DoseRange.NONE));
    }

    @Test
    void plannedOffFromNoonLeavesTheMorning() {
        Instant nine = Histories.at(JUNE, LocalTime.of(9, 0));
        List<Spell> spells = List.of(
                underLamps(new Span(Instant.EPOCH, nine)), new Spell(Span.since(nine), Circumstance.PLANNED_OFF));
        List<PointReading> read = List.of(
                reading(nine.minusSeconds(60), PointRole.BASKING, 2),
                reading(nine.minusSeconds(60), PointRole.SHADE, 0));

        assertThat(dose(with(spells, read).on(JUNE)).highest().uviHours()).isEqualTo(6, within(ROUNDING));
    }

    @Test
    void withoutAStayTheDayIsUnknown() {
        assertThat(dose(with(List.of(), readOn(1, 2, 0)), 1)).isEqualTo(new DoseOfDay.Unknown(Missing.STAY));
    }

    @Test
    void theDayOfArrivalIsUnknown() {
        assertThat(dose(with(List.of(underLamps(Span.since(noon(1).minusSeconds(7200)))), readOn(1, 2, 0)), 1))
                .isEqualTo(new DoseOfDay.Unknown(Missing.STAY));
    }

    @Test
    void withoutATimerTheIndexIsKnownAndTheDoseIsNot() {
        DayOfLight day = Histories.of(List.of(underLamps(always())), new TimedLamps(List.of()), readOn(1, 2, 0))
                .on(JUNE);

        assertThat(List.of(day.certainty(), day.dose()))
                .containsExactly(Certainty.MEASURED, new DoseOfDay.Unknown(Missing.TIMER));
    }

    @Test
    void withoutAReadingInShadeTheDoseIsUnknown() {
        assertThat(dose(undisturbed(List.of(reading(noon(1), PointRole.BASKING, 2))), 1))
                .isEqualTo(new DoseOfDay.Unknown(Missing.SHADE_INDEX));
    }

    @Test
    void theIntervalsOfTheReadingsAreKeptAtBothEnds() {
        // ±20 % of 0.5 × 6 h and of 2.0 × 6 h
        DoseRange dose = dose(undisturbed(readOn(1, 2, 0.5)).on(JUNE));

        assertThat(new double[] {dose.lowestEnd().uviHours(), dose.highestEnd().uviHours()})
                .containsExactly(new double[] {2.4, 14.4}, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({
        "ON_TARGET, ON_TARGET",
        "TOO_WEAK, WEAK",
        "TOO_STRONG, STRONG",
        "OVER_CEILING, STRONG",
        "NO_SHADE, STRONG",
        "BORDERLINE, BORDERLINE",
        "NO_TARGET, UNKNOWN",
        "STALE, UNKNOWN",
        "PLANNED_OFF, UNKNOWN"
    })
    void aDayIsJudgedAsItsReadingsWere(State state, DayJudgement judgement) {
        assertThat(undisturbed(List.of(reading(noon(1), PointRole.BASKING, 2, state)))
                        .on(JUNE)
                        .judgement())
                .isEqualTo(judgement);
    }

    @Test
    void theGravestReadingOfADayDecides() {
        List<PointReading> readings = Stream.of(State.ON_TARGET, State.NO_TARGET, State.TOO_WEAK, State.BORDERLINE)
                .map(state -> reading(noon(1), PointRole.GRADIENT, 1, state))
                .toList();

        assertThat(undisturbed(readings).on(JUNE).judgement()).isEqualTo(DayJudgement.WEAK);
    }

    @ParameterizedTest
    @CsvSource({
        "TOO_WEAK, TOO_WEAK, WEAK",
        "TOO_STRONG, NO_SHADE, STRONG",
        "ON_TARGET, TOO_WEAK, UNKNOWN",
        "ON_TARGET, NO_TARGET, UNKNOWN"
    })
    void aCarriedDayIsJudgedOnlyWhereBothSidesAgree(State before, State after, DayJudgement judgement) {
        LightHistory history = undisturbed(
                List.of(reading(noon(1), PointRole.BASKING, 2, before), reading(noon(8), PointRole.BASKING, 2, after)));

        assertThat(history.on(JUNE.withDayOfMonth(4)).judgement()).isEqualTo(judgement);
    }

    @Test
    void aDayOfWhichAPartIsUnknownIsNotOnTarget() {
        Instant nine = Histories.at(JUNE, LocalTime.of(9, 0));
        List<Spell> spells = List.of(underLamps(new Span(Instant.EPOCH, nine)), underLamps(Span.since(nine)));

        assertThat(with(spells, readOn(1, 2, 0)).on(JUNE).judgement()).isEqualTo(DayJudgement.UNKNOWN);
    }

    @Test
    void spellsThatOverlapAreRefused() {
        List<Spell> spells = List.of(underLamps(always()), underLamps(Span.since(noon(1))));

        assertThatIllegalArgumentException().isThrownBy(() -> with(spells));
    }

    @ParameterizedTest
    @CsvSource({"-1, PT3H", "367, PT3H", "14, PT-1S", "14, PT24H1S"})
    void settingsThatCannotBeAreRefused(int carryDays, Duration basking) {
        assertThatIllegalArgumentException().isThrownBy(() -> new DoseSettings(carryDays, basking));
    }

    private static UvIndexOfDay basking(LightHistory history, int dayOfJune) {
        return history.on(JUNE.withDayOfMonth(dayOfJune)).parts().get(0).basking();
    }

    private static double index(UvIndexOfDay day) {
        return day.index().orElseThrow().amount();
    }

    private static DoseOfDay dose(LightHistory history, int dayOfJune) {
        return history.on(JUNE.withDayOfMonth(dayOfJune)).dose();
    }

    private static DoseRange dose(DayOfLight day) {
        return day.dose().known().orElseThrow();
    }
}
