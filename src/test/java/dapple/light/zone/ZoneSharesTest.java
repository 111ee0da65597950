package dapple.light.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import java.util.Map;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ZoneSharesTest {
    private static final ZoneTarget TARGET = new ZoneTarget(new Interval(3, 7), 0.5, 8);

    /** To either side of a factor at which places change their zone. */
    private static final double BESIDE = 1e-9;

    private static final Interval FACTORS = new Interval(0.7, 1.5);

    static Stream<Random> chances() {
        return IntStream.range(0, 20).mapToObj(Random::new);
    }

    private static ZoneShares of(ZoneTarget target, double... amounts) {
        Space space = Space.of(new Lattice(new Vec(0, 0, 0), 0.02, amounts.length, 1, 1), index -> true);
        return ZoneShares.of(space, index -> amounts[index], target);
    }

    private static Map<Zone, Double> counted(double[] amounts, double factor) {
        Space space = Space.of(new Lattice(new Vec(0, 0, 0), 0.02, amounts.length, 1, 1), index -> true);
        return ZoneMap.of(space, index -> amounts[index] * factor, TARGET).shares();
    }

    @ParameterizedTest
    @MethodSource("chances")
    void timesAFactorAreThoseOfTheMultipliedAmounts(Random chance) {
        double[] amounts = chance.doubles(200, 0, 10).toArray();
        double factor = 0.5 + chance.nextDouble();
        assertThat(of(TARGET, amounts).times(factor)).isEqualTo(counted(amounts, factor));
    }

    /** Shares change only where some amount reaches some limit; so just before and after those all are looked at. */
    @ParameterizedTest
    @MethodSource("chances")
    void withinAnIntervalAreTheLeastAndMostOfAllItsFactors(Random chance) {
        double[] amounts = chance.doubles(50, 0, 12).toArray();
        double[] factors = DoubleStream.concat(
                        DoubleStream.of(FACTORS.low(), FACTORS.high()),
                        DoubleStream.of(0.5, 3, 7, 8)
                                .flatMap(limit -> DoubleStream.of(amounts)
                                        .flatMap(amount -> DoubleStream.of(
                                                limit / amount * (1 - BESIDE), limit / amount * (1 + BESIDE)))))
                .filter(FACTORS::contains)
                .toArray();
        Map<Zone, Interval> within = of(TARGET, amounts).within(FACTORS);
        for (Zone zone : Zone.values()) {
            double[] shares = DoubleStream.of(factors)
                    .map(factor -> counted(amounts, factor).getOrDefault(zone, -1.0))
                    .toArray();
            assertThat(within)
                    .containsEntry(
                            zone,
                            new Interval(
                                    DoubleStream.of(shares).min().orElse(-1),
                                    DoubleStream.of(shares).max().orElse(-1)));
        }
    }

    @Test
    void whatPassesThroughBaskingCountsAsBaskingBetween() {
        assertThat(of(TARGET, 1.0).within(new Interval(1, 20)))
                .containsEntry(Zone.BASKING, new Interval(0, 1))
                .containsEntry(Zone.SHADE, new Interval(0, 0));
    }

    @Test
    void aZoneThatHasNoRoomStaysEmpty() {
        ZoneTarget tight = new ZoneTarget(new Interval(3, 8), 3, 8);
        assertThat(of(tight, 1, 2, 4, 6).within(new Interval(0.5, 4)))
                .containsEntry(Zone.GRADIENT, new Interval(0, 0))
                .containsEntry(Zone.ABOVE_TARGET, new Interval(0, 0));
    }

    @Test
    void darknessIsShadeWhateverTheFactor() {
        ZoneTarget dark = new ZoneTarget(new Interval(0, 7), 0, 8);
        assertThat(of(dark, 0, 0).times(3)).containsEntry(Zone.BASKING, 1.0);
        assertThat(of(TARGET, 0, 0).within(FACTORS)).containsEntry(Zone.SHADE, new Interval(1, 1));
    }

    @Test
    void whereNothingIsReachableThereAreNone() {
        Space nowhere = Space.of(new Lattice(new Vec(0, 0, 0), 0.02, 3, 1, 1), index -> false);
        ZoneShares shares = ZoneShares.of(nowhere, index -> Double.NaN, TARGET);
        assertThat(shares.times(1)).isEmpty();
        assertThat(shares.within(FACTORS)).isEmpty();
        assertThat(shares.reachable()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refuseWhatIsNoFactor(double factor) {
        ZoneShares shares = of(TARGET, 1, 2);
        assertThatIllegalArgumentException().isThrownBy(() -> shares.times(factor));
    }
}
