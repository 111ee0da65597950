package dapple.light.dose;

import static dapple.light.dose.Histories.JUNE;
import static dapple.light.dose.Histories.LONDON;
import static dapple.light.dose.Histories.readOn;
import static dapple.light.dose.Histories.underLamps;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PeriodSumTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 9, 28);
    private static final LocalDate UNTIL = LocalDate.of(2026, 12, 3);

    /** Of some dozens of additions. */
    private static final double RELATIVE_ROUNDING = 1e-12;

    static Stream<Random> chances() {
        return IntStream.range(0, 60).mapToObj(Random::new);
    }

    @Test
    void countsDaysByHowTheyAreKnown() {
        // read on 2 and 5 June, lamps off from the 8th; carried on the 3rd and 4th, unknown on the 1st, 6th and 7th
        PeriodSum sum = PeriodSum.of(tenDays());

        assertThat(List.of(sum.days(), sum.measured(), sum.carried(), sum.unknown(), sum.plannedOff()))
                .containsExactly(10, 2, 2, 3, 3);
    }

    @Test
    void leavesUnknownDaysOutOfTheDoseAndSaysHowMany() {
        PeriodSum sum = PeriodSum.of(tenDays());

        assertThat(List.of(sum.doseDays(), sum.doseUnknownDays())).containsExactly(7, 3);
    }

    @Test
    void addsTheDosesOfTheDays() {
        // 2.0 × 6 h on each of the days 2 to 5, nothing from the 8th
        assertThat(PeriodSum.of(tenDays()).dose().highest().uviHours()).isEqualTo(48, within(48 * RELATIVE_ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void lowestBestAndHighestRise(Random chance) {
        DoseRange dose = PeriodSum.of(days(history(chance, DoseSettings.USUAL))).dose();

        assertThat(Stream.of(dose.lowestEnd(), dose.lowest(), dose.best(), dose.highest(), dose.highestEnd())
                        .map(one -> one.joulesPerSquareMetre()))
                .isSorted();
    }

    @ParameterizedTest
    @MethodSource("chances")
    void ofPartsAddsUpToThatOfTheWhole(Random chance) {
        List<DayOfLight> days = days(history(chance, DoseSettings.USUAL));
        int cut = chance.nextInt(days.size());
        PeriodSum first = PeriodSum.of(days.subList(0, cut));
        PeriodSum second = PeriodSum.of(days.subList(cut, days.size()));
        PeriodSum whole = PeriodSum.of(days);

        assertThat(first.doseDays() + second.doseDays()).isEqualTo(whole.doseDays());
        double best = whole.dose().best().joulesPerSquareMetre();
        assertThat(first.dose().plus(second.dose()).best().joulesPerSquareMetre())
                .isEqualTo(best, within(best * RELATIVE_ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void everyDayIsCountedOnce(Random chance) {
        PeriodSum sum = PeriodSum.of(days(history(chance, DoseSettings.USUAL)));

        assertThat(sum.measured() + sum.carried() + sum.unknown() + sum.plannedOff())
                .isEqualTo(sum.days());
    }

    @ParameterizedTest
    @MethodSource("chances")
    void theOrderInWhichReadingsArriveDoesNotMatter(Random chance) {
        LightRecord known = known(chance);
        List<PointReading> shuffled = new ArrayList<>(known.readings());
        Collections.shuffle(shuffled, chance);
        LightRecord other = new LightRecord(LONDON, known.spells(), known.lamps(), shuffled);

        assertThat(days(new LightHistory(other, DoseSettings.USUAL)))
                .isEqualTo(days(new LightHistory(known, DoseSettings.USUAL)));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void aLongerLimitNeverMakesAKnownDayUnknown(Random chance) {
        LightRecord known = known(chance);
        int carryDays = chance.nextInt(20);
        List<DayOfLight> shorter = days(new LightHistory(known, settings(carryDays)));
        List<DayOfLight> longer = days(new LightHistory(known, settings(carryDays + 1 + chance.nextInt(20))));

        assertThat(IntStream.range(0, shorter.size()).filter(i -> isKnown(shorter.get(i))))
                .allMatch(i -> longer.get(i).equals(shorter.get(i)) || isKnown(longer.get(i)));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void aChangeOfNothingAtMidnightChangesNoMeasuredDay(Random chance) {
        Instant midnight = Span.of(LocalDate.of(2026, 10, 20), LONDON).from();
        LightRecord known = new LightRecord(
                LONDON,
                List.of(underLamps(Histories.always())),
                Histories.lampsOn(Histories.timer(chance)),
                Histories.readings(chance));
        LightRecord cut = new LightRecord(
                LONDON,
                List.of(underLamps(new Span(Instant.EPOCH, midnight)), underLamps(Span.since(midnight))),
                known.lamps(),
                known.readings());

        assertThat(measured(cut)).isEqualTo(measured(known)).isNotEmpty();
    }

    private static List<DoseOfDay> measured(LightRecord known) {
        return days(new LightHistory(known, settings(0))).stream()
                .filter(day -> day.certainty() == Certainty.MEASURED)
                .map(DayOfLight::dose)
                .toList();
    }

    private static boolean isKnown(DayOfLight day) {
        return day.certainty() != Certainty.UNKNOWN && day.dose().known().isPresent();
    }

    private static List<DayOfLight> tenDays() {
        Instant eighth = Span.of(JUNE.withDayOfMonth(8), LONDON).from();
        List<Spell> spells = List.of(
                underLamps(new Span(Instant.EPOCH, eighth)), new Spell(Span.since(eighth), Circumstance.PLANNED_OFF));
        return Histories.with(spells, readOn(2, 2, 0), readOn(5, 2, 0), readOn(9, 2, 0))
                .days(JUNE, JUNE.withDayOfMonth(11));
    }

    private static LightRecord known(Random chance) {
        return new LightRecord(
                LONDON,
                Histories.spells(chance),
                Histories.lampsOn(Histories.timer(chance), Histories.timer(chance)),
                Histories.readings(chance));
    }

    private static LightHistory history(Random chance, DoseSettings settings) {
        return new LightHistory(known(chance), settings);
    }

    private static List<DayOfLight> days(LightHistory history) {
        return history.days(FIRST, UNTIL);
    }

    private static DoseSettings settings(int carryDays) {
        return new DoseSettings(carryDays, Duration.ofHours(3));
    }
}
