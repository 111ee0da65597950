package dapple.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import dapple.demo.DemoLampLife.Kind;
import dapple.demo.DemoLampLife.Span;
import dapple.demo.DemoLampLife.Turn;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class DemoLampLifeTest {
    private static final Instant END = Instant.parse("2026-11-27T10:00:00Z");
    private static final Instant BEGIN = END.minus(Duration.ofDays(728));
    private static final Kind TUBE = new Kind(10, 1e-4, 4000, false);

    @Test
    void theOneThatHangsThereAtTheEndHasBurntAsTheTableSays() {
        Turn last = last(DemoLampLife.of("L40", 500, TUBE, new Span(BEGIN, END)));
        assertThat(last).isEqualTo(new Turn("L40", END.minus(Duration.ofDays(50)), 0));
    }

    @Test
    void oneThatIsOlderThanTheRecordIsFoundWithItsHours() {
        DemoLampLife life = DemoLampLife.of("L16", 7900, TUBE, new Span(BEGIN, END));
        assertThat(life.turns()).containsExactly(new Turn("L16", BEGIN, 7900 - 728 * 10));
    }

    @Test
    void eachComesWhenTheOneBeforeGoes() {
        List<Turn> turns =
                DemoLampLife.of("L40", 500, TUBE, new Span(BEGIN, END)).turns();
        assertThat(turns).extracting(Turn::from).isSorted().doesNotHaveDuplicates();
        assertThat(turns.get(0).from()).isEqualTo(BEGIN);
    }

    /** 4000 hours at 10 a day, give or take 15 %: 340 to 460 days. */
    @Test
    void theyAreSwappedAboutWhenTheirHoursAreOver() {
        List<Turn> turns =
                DemoLampLife.of("L40", 500, TUBE, new Span(BEGIN, END)).turns();
        Turn before = turns.get(turns.size() - 2);
        assertThat(Duration.between(
                        before.from(), last(new DemoLampLife(turns, TUBE)).from()))
                .isBetween(Duration.ofDays(340), Duration.ofDays(460));
    }

    @Test
    void noneGivesMoreWithTheHours() {
        DemoLampLife life = DemoLampLife.of("L16", 7900, TUBE, new Span(BEGIN, END));
        assertThat(life.output(END)).isLessThan(life.output(BEGIN));
    }

    /** e^(−1e-4 · 7280) = 0.48, by a pace that scatters by 0.3 in its logarithm: three times that is 0.17 to 0.74. */
    @Test
    void itLosesAsItsClassDoes() {
        DemoLampLife life = DemoLampLife.of("L16", 7900, TUBE, new Span(BEGIN, END));
        assertThat(life.output(END) / life.output(BEGIN)).isBetween(0.17, 0.74);
    }

    @Test
    void oneThatLastsHangsThereFromTheBeginning() {
        Kind lasting = new Kind(11, 3e-5, 3000, true);
        assertThat(DemoLampLife.of("L11", 0, lasting, new Span(BEGIN, END)).turns())
                .containsExactly(new Turn("L11", BEGIN, 0));
    }

    @Test
    void itIsBoughtBeforeItHangs() {
        DemoLampLife life = DemoLampLife.of("L40", 500, TUBE, new Span(BEGIN, END));
        assertThat(life.boughtAt(last(life))).isEqualTo(END.minus(Duration.ofDays(50 + 14)));
    }

    /** The middle of M1's first term, in which it goes from 1 to 0.97 of what there is. */
    @Test
    void aMeterDriftsEvenlyBetweenItsCalibrations() {
        DemoMeterLives lives = DemoMeterLives.read(END);
        Instant middle =
                END.minus(Duration.ofDays(455).plus(Duration.ofDays(365).dividedBy(2)));
        assertThat(lives.shows("M1", middle)).isCloseTo(0.985, offset(1e-6));
    }

    @Test
    void aMeterShowsWhatThereIsAfterItWasAdjusted() {
        assertThat(DemoMeterLives.read(END).shows("M1", END)).isEqualTo(1);
    }

    @Test
    void aMeterOfWhichNothingIsToldShowsWhatThereIs() {
        assertThat(DemoMeterLives.read(END).shows("M5", END)).isEqualTo(1);
    }

    private static Turn last(DemoLampLife life) {
        return life.turns().get(life.turns().size() - 1);
    }
}
