package dapple.light.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import java.util.Map;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ZoneMapTest {
    private static final ZoneTarget TARGET = new ZoneTarget(new Interval(3, 7), 0.5, 8);
    private static final double ROUNDING = 1e-12;

    private final Lattice lattice = new Lattice(new Vec(0, 0, 0), 0.02, 7, 5, 4);

    static Stream<Random> chances() {
        return IntStream.range(0, 20).mapToObj(Random::new);
    }

    private double[] amounts(Random chance) {
        return chance.doubles(lattice.size(), 0, 10).toArray();
    }

    private Map<Zone, Double> shares(double[] amounts, ZoneTarget target) {
        return ZoneMap.of(Space.of(lattice, index -> amounts[index] < 9.5), index -> amounts[index], target)
                .shares();
    }

    @ParameterizedTest
    @MethodSource("chances")
    void sharesAddUpToOne(Random chance) {
        double sum = shares(amounts(chance), TARGET).values().stream()
                .mapToDouble(share -> share)
                .sum();
        assertThat(sum).isEqualTo(1, within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void aLowerShadeLimitNeverRaisesItsShare(Random chance) {
        double[] amounts = amounts(chance);
        double high = 3 * chance.nextDouble();
        double low = high * chance.nextDouble();
        double of = shares(amounts, new ZoneTarget(new Interval(3, 7), high, 8)).getOrDefault(Zone.SHADE, -1.0);
        assertThat(shares(amounts, new ZoneTarget(new Interval(3, 7), low, 8)).getOrDefault(Zone.SHADE, 2.0))
                .isLessThanOrEqualTo(of);
    }

    @ParameterizedTest
    @MethodSource("chances")
    void mirroringChangesNoShare(Random chance) {
        double[] amounts = amounts(chance);
        IntUnaryOperator mirrored =
                index -> lattice.index(6 - lattice.x(index), 4 - lattice.y(index), lattice.z(index));
        double[] there = IntStream.range(0, lattice.size())
                .map(mirrored)
                .mapToDouble(index -> amounts[index])
                .toArray();
        assertThat(shares(there, TARGET)).isEqualTo(shares(amounts, TARGET));
    }

    @Test
    void whatIsNotReachableCountsNothing() {
        ZoneMap map = ZoneMap.of(Space.of(lattice, index -> index < 10), index -> index < 4 ? 0 : 5, TARGET);
        assertThat(map.reachable()).isEqualTo(10);
        assertThat(map.shares()).containsEntry(Zone.SHADE, 0.4).containsEntry(Zone.BASKING, 0.6);
    }

    @Test
    void whereNothingIsReachableThereAreNoShares() {
        ZoneMap map = ZoneMap.of(Space.of(lattice, index -> false), index -> 0, TARGET);
        assertThat(map.shares()).isEmpty();
        assertThat(map.brightest()).isEmpty();
    }

    @Test
    void theBrightestIsTheFirstOfThoseThatHaveMost() {
        ZoneMap map = ZoneMap.of(Space.of(lattice, index -> index > 2), index -> index < 9 ? 6 : 2, TARGET);
        assertThat(map.brightest()).hasValue(3);
    }
}
