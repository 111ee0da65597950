package dapple.light.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Spots of one beam, each read 30 cm below: at the receiver, 30 cm below, each gives what was read. */
class SwapAnswerTest {
    private static final Receiver BELOW = new Receiver(new Vec(0, 0, 0.5), new Facing.Direction(Vec.UP));
    private static final Lamp OLD = SeededEnclosure.spot("old", new Vec(0, 0, 0.8), 6, 20_000);

    private static LampOption spot(String id, double uvIndex, double lux) {
        Lamp lamp = SeededEnclosure.spot(id, new Vec(5, 5, 5), uvIndex, lux);
        return new LampOption(id, List.of(new Pose(lamp)), Optional.of(70.0), new Origin.AtHand(), 1);
    }

    private static SwapAnswer swap(Band uv, LampOption... options) {
        Demand basking = Demand.basking("basking", Quantity.UV_INDEX, BELOW, uv);
        Scene scene = new Scene(1e-4, List.of(OLD), List.of(), List.of());
        return SwapAnswer.of(new SwapTask(scene, "old", List.of(options), List.of(basking)));
    }

    private static List<String> order(SwapAnswer answer) {
        return answer.choices().stream().map(SwapChoice::optionId).toList();
    }

    @Test
    void takesTheOneThatChangesFewestQuantities() {
        SwapAnswer answer = swap(new Band(3, 4), spot("dim", 3.9, 8000), spot("alike", 3.2, 20_500));
        assertThat(answer.best()).map(SwapChoice::optionId).hasValue("alike");
        assertThat(answer.choices().get(0).changed()).containsExactly(Quantity.UV_INDEX);
    }

    @Test
    void takesTheNearestAmountsAmongThose() {
        SwapAnswer answer = swap(new Band(3, 4), spot("farther", 3.2, 20_000), spot("nearer", 3.9, 20_000));
        assertThat(order(answer)).containsExactly("nearer", "farther");
    }

    /** √(6/3 · 20000/20000) by hand. */
    @Test
    void saysTheMeanFactor() {
        assertThat(swap(new Band(3, 4), spot("half", 3, 20_000))
                        .choices()
                        .get(0)
                        .meanFactor())
                .isCloseTo(Math.sqrt(2), within(1e-3));
    }

    @Test
    void findsNoneWhereNoneMeetsTheDemand() {
        SwapAnswer answer = swap(new Band(3, 4), spot("far too strong", 12, 20_000), spot("too strong", 5, 20_000));
        assertThat(answer.best()).isEmpty();
        assertThat(order(answer)).containsExactly("too strong", "far too strong");
    }

    @Test
    void countsAQuantityThatGoes() {
        Lamp dark = SeededEnclosure.lamp("dark", new Vec(0, 0, 0), OLD.source(), 3.5, 1);
        Lamp bare = new Lamp(
                "dark", dark.centre(), dark.aim(), dark.source(), dark.outputs().subList(0, 1));
        LampOption option = new LampOption("dark", List.of(new Pose(bare)), Optional.empty(), new Origin.ToBuy(), 1);
        assertThat(swap(new Band(3, 4), option).choices().get(0).changed()).contains(Quantity.ILLUMINANCE);
    }

    @Test
    void refusesALampThatIsNotThere() {
        Demand basking = Demand.basking("basking", Quantity.UV_INDEX, BELOW, new Band(1, 2));
        Scene scene = new Scene(1e-4, List.of(OLD), List.of(), List.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SwapTask(scene, "other", List.of(), List.of(basking)));
    }
}
