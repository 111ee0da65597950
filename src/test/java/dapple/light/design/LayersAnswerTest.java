package dapple.light.design;

import static dapple.light.design.SeededEnclosure.DOWN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Percentage.withPercentage;

import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A spot that gives UV index 8 at the receiver, under a sheet that passes 0.6 a layer: 8 · 0.6^n by hand. */
class LayersAnswerTest {
    private static final Receiver FLOOR = new Receiver(new Vec(0, 0, 0), new Facing.Direction(Vec.UP));

    private static LayersTask sheet(int most) {
        Filter.Plane plane = SeededEnclosure.mesh(0.4, 1).plane();
        return task(new Filter.Measured(plane, Map.of(Quantity.UV_INDEX, 0.6), 1), most);
    }

    private static LayersTask task(Filter filter, int most) {
        Lamp lamp = new Lamp(
                "spot",
                new Vec(0, 0, 0.5),
                DOWN,
                new Source.Spot(new Beam.Power(3)),
                List.of(new Output.Emission(Quantity.UV_INDEX, 2, 1)));
        return new LayersTask(
                new Scene(1e-4, List.of(lamp), List.of(filter), List.of()), 0, 0, most, FLOOR, Quantity.UV_INDEX);
    }

    @Test
    void findsTheLayersThatBringTheLightIntoTheBand() {
        LayersAnswer answer = LayersAnswer.of(sheet(5), new Band(2.5, 3.2));
        assertThat(answer.isMet()).isTrue();
        assertThat(answer.best().layers()).isEqualTo(2);
        assertThat(answer.best().amount()).isCloseTo(2.88, withPercentage(0.01));
    }

    @Test
    void countsNoLayerToo() {
        assertThat(LayersAnswer.of(sheet(5), new Band(7, 9)).best().layers()).isZero();
    }

    @Test
    void prefersTheMiddleOfTheBand() {
        assertThat(LayersAnswer.of(sheet(5), new Band(1, 5)).best().layers()).isEqualTo(2);
    }

    /** 1.728 is too high by 1.16, 1.0368 too low by 1.35. */
    @Test
    void saysTheNearestWhereNoneIsInTheBand() {
        LayersAnswer answer = LayersAnswer.of(sheet(5), new Band(1.4, 1.49));
        assertThat(answer.isMet()).isFalse();
        assertThat(answer.best().layers()).isEqualTo(3);
        assertThat(answer.all()).hasSize(6);
    }

    /** Straight through a weave (1 − d/p)² a layer [wirecloth2026]: (1 − 0.4/3)⁴ of two. */
    @Test
    void asksTheEngineForAWeave() {
        LayersAnswer answer = LayersAnswer.of(task(SeededEnclosure.mesh(0.4, 3), 4), new Band(4, 5));
        assertThat(answer.all().get(2).amount()).isCloseTo(8 * Math.pow(1 - 0.4 / 3, 4), withPercentage(0.01));
    }

    @Test
    void refusesASecondLayerOfAPane() {
        Filter pane = new Filter.Pane(SeededEnclosure.mesh(0.4, 1).plane(), 1.5, 0.004, Map.of());
        LayersTask task = task(pane, 2);
        assertThatIllegalArgumentException().isThrownBy(() -> LayersAnswer.of(task, Band.atMost(1)));
    }
}
