package dapple.light.design;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** As in HeightSolverTest, in 200 enclosures. */
class HeightSolverSimulationIT {
    private static final int ENCLOSURES = 200;

    static LongStream seeds() {
        return LongStream.iterate(1001, seed -> seed + 1)
                .filter(HeightSolverTest::isLit)
                .limit(ENCLOSURES);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void readsBackInSeededEnclosures(long seed) {
        HeightSolverTest.check(seed);
    }
}
