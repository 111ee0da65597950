package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.geometry.Box;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A receiver moves sideways, in small steps, into the shadow of a long shelf: light fades over the width that the size
 * of the source gives, and never jumps.
 */
class PenumbraTest {
    private static final double ACCURACY = 1e-4;
    private static final double SOURCE_HEIGHT = 0.9;
    private static final double EDGE_HEIGHT = 0.45;

    /** Between two steps the shadow's edge moves over this share of the source. */
    private static final double STEP = 0.01;

    /**
     * The densest strip of a source has no more than this times its mean light per width: 4/π in the middle of a disc
     * and π/2 at the limb of a cylinder's silhouette seen from beside its axis, with room for the slant.
     */
    private static final double DENSEST = 1.8;

    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Vec ALONG = new Vec(0, 1, 0);

    static Stream<Arguments> sources() {
        return Stream.of(
                Arguments.of(new Source.Cylinder(0.85, ALONG, 0.008), 0.016),
                Arguments.of(new Source.Cylinder(0.1, ALONG, 0.03), 0.06),
                Arguments.of(new Source.Rectangle(0.4, ALONG, 0.1), 0.1),
                Arguments.of(new Source.Disc(0.05), 0.1),
                Arguments.of(new Source.Face(Beam.Power.ofBeamAngle(40), 0.03), 0.06));
    }

    @ParameterizedTest
    @MethodSource("sources")
    void fadesWithoutAJump(Source source, double width) {
        double[] lights = across(source, width);
        double open = lights[0];
        double most = DENSEST * STEP * open + 2 * ACCURACY * open;
        for (int step = 1; step < lights.length; step++) {
            assertThat(Math.abs(lights[step] - lights[step - 1])).isLessThanOrEqualTo(most);
        }
    }

    @ParameterizedTest
    @MethodSource("sources")
    void goesFromAllToNothing(Source source, double width) {
        double[] lights = across(source, width);
        assertThat(lights[0]).isPositive();
        assertThat(lights[lights.length - 1]).isZero();
    }

    /** Light at places on the floor, from where all of a source is seen to where none is. */
    private static double[] across(Source source, double width) {
        Lamp lamp = new Lamp(
                "lamp",
                new Vec(0, 0, SOURCE_HEIGHT),
                DOWN,
                source,
                List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
        Box shelf = Box.of(new Vec(0, -2, EDGE_HEIGHT - 0.02), new Vec(2, 2, EDGE_HEIGHT), 0);
        Field field = Field.of(new Scene(ACCURACY, List.of(lamp), List.of(), List.of(shelf)));
        double step = STEP * width * EDGE_HEIGHT / (SOURCE_HEIGHT - EDGE_HEIGHT);
        double[] lights = new double[140];
        for (int index = 0; index < lights.length; index++) {
            Vec place = new Vec((index - 60) * step, 0, 0);
            lights[index] = field.at(new Receiver(place, new Facing.Direction(Vec.UP)))
                    .values()
                    .getOrDefault(Quantity.UV_INDEX, Double.NaN);
        }
        return lights;
    }
}
