package dapple.light.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClearanceTest {
    /** Squares are scaled to steps and back. */
    private static final double ROUNDING = 1e-12;

    static Stream<Long> seeds() {
        return IntStream.range(0, 40).mapToObj(Long::valueOf);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isTheDistanceToTheNearestBorderPlace(long seed) {
        Random chance = new Random(seed);
        Sheet sheet = new Sheet(
                1 + chance.nextInt(30), 1 + chance.nextInt(30), 0.1 + chance.nextDouble(), 0.1 + chance.nextDouble());
        BitSet inside = new BitSet();
        IntStream.range(0, sheet.size()).filter(index -> chance.nextInt(40) > 0).forEach(inside::set);
        double[] found = Clearance.of(sheet, inside::get, index -> false);
        for (int index = 0; index < sheet.size(); index++) {
            assertThat(found[index]).isEqualTo(nearestBorder(sheet, inside, index), within(ROUNDING));
        }
    }

    private static double nearestBorder(Sheet sheet, BitSet inside, int index) {
        return IntStream.range(0, sheet.size())
                .filter(other -> isBorder(sheet, inside, other))
                .mapToDouble(other -> Math.hypot(
                        (sheet.u(other) - sheet.u(index)) * sheet.stepU(),
                        (sheet.v(other) - sheet.v(index)) * sheet.stepV()))
                .min()
                .orElseThrow();
    }

    private static boolean isBorder(Sheet sheet, BitSet inside, int index) {
        for (int v = sheet.v(index) - 1; v <= sheet.v(index) + 1; v++) {
            for (int u = sheet.u(index) - 1; u <= sheet.u(index) + 1; u++) {
                boolean on = u >= 0 && u < sheet.countU() && v >= 0 && v < sheet.countV();
                if (!on || !inside.get(u + v * sheet.countU())) {
                    return true;
                }
            }
        }
        return false;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverClaimsMoreRoomThanARoundRegionHas(long seed) {
        Random chance = new Random(seed);
        double radius = 5 + 20 * chance.nextDouble();
        double middleU = 30 + chance.nextDouble();
        double middleV = 30 + chance.nextDouble();
        Sheet sheet = new Sheet(61, 61, 1, 1);
        double[] found = Clearance.of(
                sheet,
                index -> Math.hypot(sheet.u(index) - middleU, sheet.v(index) - middleV) <= radius,
                index -> false);
        double most = IntStream.range(0, sheet.size())
                .mapToDouble(index -> found[index])
                .max()
                .orElseThrow();
        double diagonalAndAHalf = 1.5 * Math.sqrt(2);
        assertThat(most).isBetween(radius - diagonalAndAHalf, radius);
    }

    @Test
    void aPlaceBesideSomethingIsOnTheBorder() {
        Sheet sheet = new Sheet(9, 9, 1, 1);
        double[] found = Clearance.of(sheet, index -> true, index -> sheet.u(index) == 4);
        assertThat(found[4 + 9 * 4]).isZero();
        assertThat(found[2 + 9 * 4]).isEqualTo(2);
    }
}
