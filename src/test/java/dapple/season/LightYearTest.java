package dapple.season;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampShape;
import dapple.rig.DailyTimer;
import dapple.rig.FittingFacts;
import dapple.rig.Hanging;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampTimer;
import dapple.rig.RigExamples;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Year;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** That background light comes before basking lamps and goes after them is common practice, no source. */
class LightYearTest {
    private static final LampTimer NINE_TO_FIVE = daily(9, 17);

    @Test
    void lampsOfAGroupThatBurnTogetherCountOnce() {
        LightYear year = year(lit("L1", LampClass.LED_BAR, daily(8, 14)), lit("L2", LampClass.LED_BAR, daily(12, 18)));
        assertThat(year.hours(LampGroup.BACKGROUND)).hasSize(365).containsOnly(10.0);
    }

    @Test
    void aTubeForUltravioletIsBackgroundLightToo() {
        LightYear year = year(lit("L1", LampClass.TUBE_T5, NINE_TO_FIVE));
        assertThat(year.has(LampGroup.BACKGROUND)).isTrue();
        assertThat(year.has(LampGroup.ULTRAVIOLET)).isTrue();
        assertThat(year.has(LampGroup.BASKING)).isFalse();
    }

    /** Basking from 9 to 17, light from 8 to 16: the last hour is dark. */
    @Test
    void baskingLampsWithoutOtherLightAreSaid() {
        LightYear year =
                year(lit("L1", LampClass.TUNGSTEN_HALOGEN, NINE_TO_FIVE), lit("L2", LampClass.LED_BAR, daily(8, 16)));
        assertThat(year.worst().orElseThrow().minutes()).isEqualTo(60);
    }

    @Test
    void withinBackgroundLightNothingIsSaid() {
        LightYear year =
                year(lit("L1", LampClass.TUNGSTEN_HALOGEN, NINE_TO_FIVE), lit("L2", LampClass.LED_BAR, daily(8, 18)));
        assertThat(year.worst()).isEmpty();
    }

    /** The shortest day of 40° N lasts 9 h 20 min, so that basking lamps that burn ten hours stand out most on it. */
    @Test
    void theWorstDayIsFound() {
        LightYear year = year(
                lit("L1", LampClass.TUNGSTEN_HALOGEN, daily(8, 18)),
                lit("L2", LampClass.LED_BAR, new HomeDayTimer(40, false, LocalTime.of(13, 0), 0, 0, 1440)));
        assertThat(year.worst().orElseThrow().day()).isBetween(LocalDate.of(2026, 12, 15), LocalDate.of(2026, 12, 28));
    }

    @Test
    void withoutAnyBackgroundLightNothingIsSaid() {
        assertThat(year(lit("L1", LampClass.TUNGSTEN_HALOGEN, NINE_TO_FIVE)).worst())
                .isEmpty();
    }

    /** A year that begins on a Thursday: its first week begins on Monday, 29 December. */
    @Test
    void weeksBeginOnMondays() {
        FittingFacts lamp = lit("L1", LampClass.LED_BAR, NINE_TO_FIVE);
        List<TimerRow.Week> weeks = new TimerRow(lamp, Year.of(2026), Optional.empty(), Optional.empty()).weeks();
        assertThat(weeks.get(0).from()).isEqualTo(LocalDate.of(2025, 12, 29));
        assertThat(weeks.get(weeks.size() - 1).from()).isEqualTo(LocalDate.of(2026, 12, 28));
        assertThat(weeks).hasSize(53);
    }

    private static LightYear year(FittingFacts... lamps) {
        return new LightYear(Year.of(2026), List.of(lamps));
    }

    private static LampTimer daily(int on, int off) {
        return new DailyTimer(LocalTime.of(on, 0), LocalTime.of(off, 0));
    }

    private static FittingFacts lit(String tag, LampClass kind, LampTimer timer) {
        LampFacts lamp = RigExamples.lamp(tag, kind, Optional.of(new LampShape.Spot(40, Optional.empty())));
        FittingFacts hung = RigExamples.fitting(lamp, Optional.empty());
        Hanging hanging = new Hanging("place", Optional.empty(), Optional.of(timer), Optional.empty());
        return new FittingFacts(hung.id(), 1, lamp, hanging, Optional.empty(), hung.span());
    }
}
