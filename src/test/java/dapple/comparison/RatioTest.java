package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RatioTest {
    private static final Instant BEGUN = Instant.parse("2026-03-02T09:00:00Z");

    /** The hand-worked numbers below have four digits. */
    private static final double FOUR_DIGITS = 5e-5;

    private static final Map<Long, MeterFacts> METERS = Map.of(1L, meter(1), 2L, meter(2));
    private static final Map<Long, Long> ENCLOSURES =
            LongStream.range(0, 10).boxed().collect(Collectors.toMap(Function.identity(), point -> 100 + point));

    @Test
    void itIsTheMedianOfWhatTheFirstShowsMore() {
        assertThat(compared(1.1, 0).percent()).isCloseTo(10, within(1e-9));
    }

    /** One point where the sensor slipped does not move it. */
    @Test
    void onePointThatWasMissedHardlyMatters() {
        List<MeterRead> reads = new ArrayList<>(reads(1.1, 0));
        reads.set(0, new MeterRead(0, 1, BEGUN, 0.6));
        assertThat(Ratio.of(reads, METERS, ENCLOSURES).get(0).percent()).isCloseTo(10, within(1e-9));
    }

    /**
     * By hand, at 3.0 UVI with steps of 0.1: own share² = 0.05² + (0.1/√12/3)² = 0.0025926; of ten pairs, median,
     * π/2 · 2 · 0.0025926/10 = 0.00081449; days and lamps 2 · (0.013² + 0.04²/10) = 0.000658; U = 2 · √0.00147249 = 0.0767.
     */
    @Test
    void itsUncertaintyIsWorkedOutByHand() {
        assertThat(compared(1, 0).lnExpanded()).isCloseTo(0.0767, within(FOUR_DIGITS));
    }

    /** By hand: each meter √(0.2² + (2 · 0.1/√12/3)²) = 0.20092; √(2 · 0.20092² + 0.0767²) = 0.2943. */
    @Test
    void whatTheyMayDifferByIsWorkedOutByHand() {
        assertThat(compared(1, 0).lnAllowed()).isCloseTo(0.2943, within(FOUR_DIGITS));
    }

    /** ln 1.3 = 0.262 and ln 1.4 = 0.336; either way round. */
    @ParameterizedTest
    @CsvSource({"1.3, true", "1.4, false", "0.76, true", "0.71, false"})
    void theyAgreeWithinWhatIsStated(double ratio, boolean agrees) {
        assertThat(compared(ratio, 0).agrees()).isEqualTo(agrees);
    }

    @Test
    void whatWasReadOnTwoDaysCountsTogether() {
        List<MeterRead> reads = reads(1.1, 1440);
        assertThat(Ratio.of(reads, METERS, ENCLOSURES).get(0).pairs()).isEqualTo(10);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.2})
    void darknessGivesNoRatio(double amount) {
        List<MeterRead> dark = List.of(new MeterRead(0, 1, BEGUN, amount), new MeterRead(0, 2, BEGUN, amount));
        assertThat(Ratio.of(dark, METERS, ENCLOSURES)).isEmpty();
    }

    private static Ratio compared(double ratio, int gapMinutes) {
        return Ratio.of(reads(ratio, gapMinutes), METERS, ENCLOSURES).get(0);
    }

    /** The second meter shows 3.0 everywhere; from the sixth point on after a gap. */
    private static List<MeterRead> reads(double ratio, int gapMinutes) {
        List<MeterRead> reads = new ArrayList<>();
        for (int point = 0; point < 10; point++) {
            Instant at = BEGUN.plus(Duration.ofMinutes(2L * point + (point < 5 ? 0 : gapMinutes)));
            reads.add(new MeterRead(point, 1, at, 3.0 * ratio));
            reads.add(new MeterRead(point, 2, at.plusSeconds(60), 3.0));
        }
        return reads;
    }

    private static MeterFacts meter(long id) {
        return new MeterFacts(
                id,
                "M" + id,
                "meter",
                Quantity.UV_INDEX,
                new MeterUncertainty(0.2, 0.1),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
