package dapple.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

class ZoneLimitsTest {
    /** Limits are printed with two decimals at most. */
    private static final double HALF_OF_LAST_DIGIT = 0.005;

    private final ZoneLimits limits = new ZoneLimits();

    /** The ranges of the four UV zones, typed from the published table as agreeing secondary texts print it. */
    @ParameterizedTest
    @CsvFileSource(resources = "uv-zones-published.csv", useHeadersInDisplayName = true)
    void keepsToThePublishedRanges(
            int zone, String method, double lowUvi, double highUvi, boolean highIsCapOfPractice, String source) {
        Band basking = limitAt(new UvZone(zone, LightMethod.valueOf(method)), LimitPlace.BASKING);
        assertThat(basking.low()).as(source).isCloseTo(lowUvi, within(HALF_OF_LAST_DIGIT));
        if (highIsCapOfPractice) {
            assertThat(basking.high()).as(source).isLessThanOrEqualTo(highUvi);
        } else {
            assertThat(basking.high()).as(source).isCloseTo(highUvi, within(HALF_OF_LAST_DIGIT));
        }
    }

    static Stream<UvZone> zones() {
        return Stream.of(
                new UvZone(2, LightMethod.SUNBEAM),
                new UvZone(3, LightMethod.SUNBEAM),
                new UvZone(4, LightMethod.SUNBEAM),
                new UvZone(1, LightMethod.SHADE),
                new UvZone(2, LightMethod.SHADE));
    }

    /** Common practice, no source: the larger of 0.1 and a tenth of the basking low. */
    @ParameterizedTest
    @MethodSource("zones")
    void asksForShadeOfATenth(UvZone zone) {
        double expected = Math.max(0.1, 0.1 * limitAt(zone, LimitPlace.BASKING).low());
        assertThat(limitAt(zone, LimitPlace.SHADE).high()).isCloseTo(expected, within(HALF_OF_LAST_DIGIT));
    }

    /** Common practice, no source: the smaller of 8 and 1.25 times the basking high, for the sunbeam method. */
    @ParameterizedTest
    @MethodSource("zones")
    void setsTheCeilingOfTheSunbeamMethodAQuarterAbove(UvZone zone) {
        double expected = Math.min(8, 1.25 * limitAt(zone, LimitPlace.BASKING).high());
        if (zone.method() == LightMethod.SUNBEAM) {
            assertThat(limitAt(zone, LimitPlace.CEILING).high()).isCloseTo(expected, within(HALF_OF_LAST_DIGIT));
        }
    }

    @ParameterizedTest
    @MethodSource("zones")
    void makesAWholeSetOfLimits(UvZone zone) {
        Limits whole = new Limits(
                limitAt(zone, LimitPlace.BASKING),
                limitAt(zone, LimitPlace.SHADE).high(),
                limitAt(zone, LimitPlace.CEILING).high());
        assertThat(whole.shadeHigh()).isLessThan(whole.basking().low());
    }

    @ParameterizedTest
    @MethodSource("zones")
    void namesASourceForEveryCell(UvZone zone) {
        assertThat(limits.of(zone))
                .hasSize(3)
                .allSatisfy(limit -> assertThat(limit.source()).isNotBlank());
    }

    @Test
    void refusesAZoneThatTheMethodDoesNotServe() {
        assertThatThrownBy(() -> limits.of(new UvZone(4, LightMethod.SHADE)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private Band limitAt(UvZone zone, LimitPlace place) {
        List<SourcedLimit> found = limits.of(zone);
        return found.stream()
                .filter(limit -> limit.place() == place)
                .map(SourcedLimit::band)
                .findFirst()
                .orElseThrow();
    }
}
