package dapple.light.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A spot at 1 m above the origin, UV index 2 at 0.5 m, and a mesh at 0.9 m over the half of positive x. */
class RigSightTest {
    private static final double CLOSE = 1e-6;
    private static final Vec DOWN = new Vec(0, 0, -1);

    @Test
    void lightThatPassesBesideACoverDoesNotComeThroughIt() {
        assertThat(at(new Vec(-0.3, 0, 0.5)).through()).containsExactly(List.of(0.0));
    }

    @Test
    void lightThatPassesACoverComesThroughItInFull() {
        assertThat(at(new Vec(0.3, 0, 0.5)).through().get(0).get(0)).isCloseTo(1, within(CLOSE));
    }

    /** By hand: 2 · (0.5/0.7)² of a spot that is read on its axis. */
    @Test
    void theLightIsThatOfTheField() {
        assertThat(at(new Vec(-1e-6, 0, 0.3)).amount()).isCloseTo(2 * 0.25 / 0.49, within(1e-4));
    }

    /** By hand: of 1/d² at d = 0.7 m one centimetre up and down is 2 · 0.01/0.7; across it is next to nothing. */
    @Test
    void aPlaceCountsAsTheLightChangesAroundIt() {
        assertThat(at(new Vec(-0.02, 0, 0.3)).relativeOfPlace()).isCloseTo(0.02 / 0.7, within(0.004));
    }

    private static SeenLight at(Vec place) {
        Lamp spot = new Lamp(
                "spot",
                new Vec(0, 0, 1),
                DOWN,
                new Source.Spot(new Beam.Power(2)),
                List.of(new Output.Reading(Quantity.UV_INDEX, 2, new Vec(0, 0, 0.5), Vec.UP, 1)));
        Filter mesh = new Filter.Measured(
                Filter.Plane.of(new Vec(0, 0, 0.9), Vec.UP, Optional.of(new Filter.Rectangle(0, -1, 2, 1))),
                Map.of(Quantity.UV_INDEX, 0.5),
                1);
        Scene scene = new Scene(0.001, List.of(spot), List.of(mesh), List.of());
        return new RigSight(scene, Quantity.UV_INDEX, 0.01).at(new Receiver(place, new Facing.Maximum()));
    }
}
