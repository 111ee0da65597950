package dapple.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.geometry.Vec;
import dapple.rig.Mount;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MountFieldsTest {
    /** Angles are entered and shown to a hundredth of a degree, 0.0002 rad. */
    private static final double HUNDREDTH_DEGREE = 2e-4;

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 0, -1",
        "90, 0, 1, 0, 0",
        "90, 90, 0, 1, 0",
        "90, 180, -1, 0, 0",
        "90, -90, 0, -1, 0",
        "180, 0, 0, 0, 1",
        "45, 90, 0, 0.70711, -0.70711"
    })
    void aLampPointsWhereItLeans(String lean, String leanTo, double x, double y, double z) {
        Vec aim = fields(lean, leanTo, null).mount().orElseThrow().aim();
        assertThat(aim.minus(new Vec(x, y, z)).length()).isCloseTo(0, within(1e-5));
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 0", "90, 0, 1", "45, 0.70711, 0.70711"})
    void itsLengthPointsWhereItIsSaid(String lengthTo, double x, double y) {
        Vec along = fields(null, null, lengthTo).mount().orElseThrow().along().orElseThrow();
        assertThat(along.minus(new Vec(x, y, 0)).length()).isCloseTo(0, within(1e-5));
    }

    @Test
    void withoutLengthItHasNoDirection() {
        assertThat(fields(null, null, null).mount().orElseThrow().along()).isEmpty();
    }

    @Test
    void withoutPositionThereIsNoMount() {
        assertThat(new MountFields(null, null, null, null, null, null).mount()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, , 0", "20, 90, 0", "35.5, -120.25, 33", "90, 45, 135"})
    void aMountComesBackAsItWasEntered(String lean, @Nullable String leanTo, String lengthTo) {
        Mount mount = fields(lean, leanTo, lengthTo).mount().orElseThrow();
        Mount again = MountFields.of(Optional.of(mount)).mount().orElseThrow();
        assertThat(again.centre()).isEqualTo(mount.centre());
        assertThat(again.aim().minus(mount.aim()).length()).isLessThan(HUNDREDTH_DEGREE);
    }

    private static MountFields fields(@Nullable String lean, @Nullable String leanTo, @Nullable String lengthTo) {
        BigDecimal half = new BigDecimal("0.50");
        return new MountFields(half, half, half, number(lean), number(leanTo), number(lengthTo));
    }

    private static @Nullable BigDecimal number(@Nullable String text) {
        return text == null ? null : new BigDecimal(text);
    }
}
