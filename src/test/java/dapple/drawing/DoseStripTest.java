package dapple.drawing;

import static dapple.drawing.Samples.FIRST_WEEK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.dose.DoseRange;
import dapple.light.dose.PeriodSum;
import dapple.light.quantity.ErythemalDose;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DoseStripTest {
    private static final double ROUNDING = 1e-9;

    @Test
    void aWeekIsTheMeanOfItsKnownDays() {
        // 5 days of 90, 900 and 1800 J/m²: 1, 10 and 20 UVI·h
        DoseWeek week = DoseWeek.of(FIRST_WEEK, sum(1, 4, 2, 0, 5), "");

        assertThat(new double[] {week.lowestUviHours(), week.bestUviHours(), week.highestUviHours()})
                .containsExactly(new double[] {1, 10, 20}, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 6, 0, 0, 7, MEASURED, false",
        "0, 7, 0, 0, 7, CARRIED, false",
        "0, 2, 5, 0, 2, CARRIED, true",
        "0, 0, 7, 0, 0, UNKNOWN, true",
        "2, 0, 5, 0, 0, UNKNOWN, true",
        "0, 0, 0, 7, 7, PLANNED_OFF, false",
        "0, 0, 3, 4, 4, PLANNED_OFF, true"
    })
    void aWeekIsDrawnAsItIsKnown(
            int measured, int carried, int unknown, int off, int doseDays, DoseWeek.Kind kind, boolean isPartly) {
        DoseWeek week = DoseWeek.of(FIRST_WEEK, sum(measured, carried, unknown, off, doseDays), "");

        assertThat(List.of(week.kind(), week.isPartlyUnknown())).containsExactly(kind, isPartly);
    }

    @Test
    void whatIsUnknownOrNotGivenIsABoxAndNoBar() {
        // of 52 weeks 9 are planned off, 3 unknown, the last is not given
        DoseStrip strip = year(StripSize.LONG);

        assertThat(strip.bars()).hasSize(52 - 9 - 3 - 1);
        assertThat(strip.unknown()).extracting(DoseStrip.Box::weeks).containsExactly(1, 2, 1);
    }

    @Test
    void weeksThatArePlannedOffAreDrawnAsOne() {
        assertThat(year(StripSize.LONG).off()).extracting(DoseStrip.Box::weeks).containsExactly(9);
    }

    @Test
    void aNotchLiesOnItsBar() {
        DoseStrip strip = year(StripSize.LONG);

        assertThat(strip.bars())
                .allSatisfy(
                        bar -> assertThat(Double.parseDouble(bar.notch().replaceFirst("M[-0-9.]+ ([0-9.]+)h.*", "$1")))
                                .isBetween(bar.y(), bar.y() + bar.height()));
    }

    @Test
    void aKnownDoseOfNothingIsStillABar() {
        DoseWeek dark = new DoseWeek(FIRST_WEEK, DoseWeek.Kind.MEASURED, 0, 0, 0, false, "");
        DoseStrip strip =
                DoseStrip.of(new DoseHistory(Samples.LONDON, List.of(dark), List.of()), StripSize.LONG, FIRST_WEEK, 2);

        assertThat(strip.bars()).extracting(DoseStrip.Bar::height).containsExactly(2.0);
    }

    @Test
    void staysThatFollowOneAnotherShareARow() {
        assertThat(year(StripSize.LONG).lanes().get(0).entries())
                .extracting(DoseStrip.Entry::y)
                .containsOnly(
                        year(StripSize.LONG).lanes().get(0).entries().get(0).y());
    }

    @Test
    void whatLastsAtTheSameTimeHasRowsOfItsOwn() {
        List<Lane.Entry> twice = List.of(
                new Lane.Entry(FIRST_WEEK, LocalDate.MAX, "with Moss"),
                new Lane.Entry(FIRST_WEEK.plusDays(1), LocalDate.MAX, "with Fern"));
        DoseHistory history = new DoseHistory(Samples.LONDON, List.of(), List.of(new Lane("stays", twice)));

        assertThat(DoseStrip.of(history, StripSize.LONG, FIRST_WEEK, 52)
                        .lanes()
                        .get(0)
                        .entries())
                .extracting(DoseStrip.Entry::y)
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(StripSize.class)
    void everythingLiesInTheDrawing(StripSize size) {
        DoseStrip strip = year(size);

        assertThat(strip.lanes().stream().flatMap(lane -> lane.entries().stream()))
                .allMatch(entry -> entry.x() >= 0
                        && entry.x() + entry.width() <= size.width()
                        && entry.y() + 24 <= strip.frame().height());
        assertThat(strip.bars())
                .allMatch(bar ->
                        bar.y() >= 0 && bar.y() + bar.height() <= strip.frame().bottom());
    }

    private static DoseStrip year(StripSize size) {
        return DoseStrip.of(Samples.year(), size, FIRST_WEEK, Samples.WEEKS);
    }

    private static PeriodSum sum(int measured, int carried, int unknown, int off, int doseDays) {
        DoseRange day = new DoseRange(
                new ErythemalDose(80),
                new ErythemalDose(90),
                new ErythemalDose(900),
                new ErythemalDose(1800),
                new ErythemalDose(2000));
        DoseRange sum = DoseRange.NONE;
        for (int i = 0; i < doseDays - off; i++) {
            sum = sum.plus(day);
        }
        return new PeriodSum(measured + carried + unknown + off, measured, carried, unknown, off, sum, doseDays);
    }
}
