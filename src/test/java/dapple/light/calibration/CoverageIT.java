package dapple.light.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** As in LampCalibrationTest, with so many series that a share of 95 % scatters by 0.5 %. */
class CoverageIT {
    private static final int SERIES = 2000;

    static Stream<Arguments> kinds() {
        LongFunction<Benches> spots = Benches::spot;
        LongFunction<Benches> tubes = Benches::tube;
        return Stream.of(Arguments.of("spots", spots), Arguments.of("tubes", tubes));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void intervalsCoverWhatMadeTheReadings(String name, LongFunction<Benches> kind) {
        Map<String, Integer> covered = new TreeMap<>();
        for (long seed = 10_001; seed <= 10_000 + SERIES; seed++) {
            Benches made = kind.apply(seed);
            FittedLamp lamp = (FittedLamp) LampCalibration.of(made.bench());
            for (FittedParameter found : lamp.parameters()) {
                int hit = found.interval().contains(made.trueValue(found.parameter())) ? 1 : 0;
                covered.merge(found.parameter().toString(), hit, Integer::sum);
            }
        }
        assertThat(covered.values())
                .allSatisfy(count -> assertThat((double) count / SERIES).isBetween(0.935, 0.97));
    }
}
