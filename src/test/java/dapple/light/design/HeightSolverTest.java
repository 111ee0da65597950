package dapple.light.design;

import static dapple.light.design.SeededEnclosure.DOWN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeightSolverTest {
    /** What is found must read back as wanted, %. */
    private static final double READ_BACK = 0.1;

    private static final Receiver FLOOR = new Receiver(new Vec(0, 0, 0), new Facing.Direction(Vec.UP));
    private static final Interval HEIGHTS = new Interval(0.05, 2);

    private static HeightTask alone(Source source, Receiver receiver, Filter... filters) {
        Lamp lamp =
                new Lamp("lamp", new Vec(0, 0, 1), DOWN, source, List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
        Scene scene = new Scene(1e-4, List.of(lamp), List.of(filters), List.of());
        return new HeightTask(scene, "lamp", receiver, Quantity.UV_INDEX, HEIGHTS);
    }

    private static HeightTask spot(Receiver receiver, Filter... filters) {
        return alone(new Source.Spot(new Beam.Power(1)), receiver, filters);
    }

    private static List<Double> heights(HeightTask task, double wanted) {
        return HeightSolver.solve(task, wanted) instanceof HeightAnswer.Met met
                ? met.heights().stream().map(AmountAtHeight::heightMetres).toList()
                : List.of();
    }

    /** Inverse square law [rp16]: intensity 1 on the axis of a point gives w at √(1/w). */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 1, 4, 100})
    void findsUnderASpotTheRootOfTheRatio(double wanted) {
        assertThat(heights(spot(FLOOR), wanted))
                .singleElement()
                .satisfies(
                        height -> assertThat(height).isCloseTo(Math.sqrt(1 / wanted), withPercentage(READ_BACK / 2)));
    }

    /** Near a long thin line π I′/(2h) [simons2001]; 60 m of it, so that its ends take less than 0.001 %. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 10})
    void findsUnderALongLineTheRatio(double wanted) {
        HeightTask line = alone(new Source.Line(60, new Vec(1, 0, 0), Optional.empty()), FLOOR);
        assertThat(heights(line, wanted))
                .singleElement()
                .satisfies(height -> assertThat(height).isCloseTo(Math.PI / (2 * wanted), withPercentage(READ_BACK)));
    }

    /**
     * Beside the axis of a beam cos θ the light is h²/(h² + d²)² by the inverse square law [rp16], which is most at d; so
     * s h² − h + s d² = 0 with s = √w has both heights.
     */
    @Test
    void findsBothHeightsBesideTheAxis() {
        double wanted = 1;
        double aside = 0.3;
        double root = Math.sqrt(1 - 4 * wanted * aside * aside);
        Receiver beside = new Receiver(new Vec(aside, 0, 0), new Facing.Direction(Vec.UP));
        List<Double> found = heights(spot(beside), wanted);
        assertThat(found).hasSize(2);
        assertThat(found.get(0)).isCloseTo((1 - root) / 2, withPercentage(READ_BACK));
        assertThat(found.get(1)).isCloseTo((1 + root) / 2, withPercentage(READ_BACK));
    }

    /** As above; so near to its most that both heights lie between two samples. */
    @Test
    void findsBothHeightsWithinOneStep() {
        double aside = 0.3037;
        double most = 1 / (4 * aside * aside);
        Receiver beside = new Receiver(new Vec(aside, 0, 0), new Facing.Direction(Vec.UP));
        assertThat(heights(spot(beside), 0.9999 * most)).hasSize(2);
    }

    @Test
    void saysTheMostThatCanBeReachedAndWhere() {
        double aside = 0.3;
        Receiver beside = new Receiver(new Vec(aside, 0, 0), new Facing.Direction(Vec.UP));
        HeightAnswer answer = HeightSolver.solve(spot(beside), 3);
        assertThat(answer).isInstanceOfSatisfying(HeightAnswer.OutOfReach.class, out -> {
            assertThat(out.most().amount()).isCloseTo(1 / (4 * aside * aside), withPercentage(READ_BACK));
            assertThat(out.most().heightMetres()).isCloseTo(aside, within(0.005));
            assertThat(out.leapAtMetres()).isEmpty();
        });
    }

    @Test
    void saysTheLeastThatCanBeReachedAndWhere() {
        HeightAnswer answer = HeightSolver.solve(spot(FLOOR), 0.1);
        assertThat(answer).isInstanceOfSatisfying(HeightAnswer.OutOfReach.class, out -> {
            assertThat(out.least().amount()).isCloseTo(0.25, withPercentage(READ_BACK));
            assertThat(out.least().heightMetres()).isEqualTo(HEIGHTS.high());
        });
    }

    /** A sheet at 1 m that passes half: from above it at most 0.5, from below it at least 1. */
    @Test
    void saysWhereTheLightLeapsOverWhatIsWanted() {
        HeightTask task = spot(FLOOR, halving());
        assertThat(HeightSolver.solve(task, 0.8))
                .isInstanceOfSatisfying(
                        HeightAnswer.OutOfReach.class,
                        out -> assertThat(out.leapAtMetres())
                                .hasValueSatisfying(at -> assertThat(at).isCloseTo(1, within(1e-6))));
    }

    private static Filter halving() {
        Filter.Plane plane = Filter.Plane.of(new Vec(0, 0, 1), Vec.UP, Optional.empty());
        return new Filter.Measured(plane, Map.of(Quantity.UV_INDEX, 0.5), 1);
    }

    /** 1/h² = 0.4 only above the sheet: √(0.5/0.4). */
    @Test
    void findsTheHeightBeyondALeap() {
        assertThat(heights(spot(FLOOR, halving()), 0.4))
                .singleElement()
                .satisfies(height -> assertThat(height).isCloseTo(Math.sqrt(0.5 / 0.4), withPercentage(READ_BACK)));
    }

    @Test
    void hangsNoLampInASolid() {
        Solid block = Box.of(new Vec(-1, -1, 0.5), new Vec(1, 1, 3), 0);
        Scene open = spot(FLOOR).scene();
        HeightTask task = new HeightTask(
                new Scene(1e-4, open.lamps(), List.of(), List.of(block)), "lamp", FLOOR, Quantity.UV_INDEX, HEIGHTS);
        assertThat(heights(task, 1 / 0.36)).isEmpty();
        assertThat(heights(task, 1 / 0.16)).hasSize(1);
        assertThat(HeightSolver.solve(task, 1 / 0.2499)).isInstanceOf(HeightAnswer.Met.class);
    }

    @Test
    void saysThatThereIsNowhereToHang() {
        Solid block = Box.of(new Vec(-1, -1, 0.01), new Vec(1, 1, 3), 0);
        HeightTask task = new HeightTask(
                new Scene(1e-4, spot(FLOOR).scene().lamps(), List.of(), List.of(block)),
                "lamp",
                FLOOR,
                Quantity.UV_INDEX,
                HEIGHTS);
        assertThat(HeightSolver.solve(task, 1)).isInstanceOf(HeightAnswer.NowhereToHang.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatCannotBeWanted(double wanted) {
        assertThatIllegalArgumentException().isThrownBy(() -> HeightSolver.solve(spot(FLOOR), wanted));
    }

    @Test
    void refusesALampThatIsNotThere() {
        Scene scene = spot(FLOOR).scene();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HeightTask(scene, "other", FLOOR, Quantity.UV_INDEX, HEIGHTS));
    }

    static LongStream seeds() {
        return LongStream.iterate(1, seed -> seed + 1)
                .filter(HeightSolverTest::isLit)
                .limit(8);
    }

    /** What a height really gives is asked for, so that there is an answer; it must read back. */
    @ParameterizedTest
    @MethodSource("seeds")
    void readsBackInSeededEnclosures(long seed) {
        check(seed);
    }

    private static HeightTask task(long seed) {
        return SeededEnclosure.of(seed).lifting(seed % 2 == 0 ? "tube" : "spot");
    }

    private static double planted(long seed) {
        return SeededEnclosure.between(new Random(seed), 0.35, 0.85);
    }

    /** Whether the lamp may hang at the planted height, and light comes to the receiver then. */
    static boolean isLit(long seed) {
        HeightTask task = task(seed);
        return task.isFree(planted(seed)) && amount(task, planted(seed)) > 1e-3;
    }

    static void check(long seed) {
        HeightTask task = task(seed);
        double wanted = amount(task, planted(seed));
        List<Double> found = heights(task, wanted);
        assertThat(found).anySatisfy(height -> assertThat(height).isCloseTo(planted(seed), within(0.02)));
        assertThat(found)
                .allSatisfy(height -> assertThat(amount(task, height)).isCloseTo(wanted, withPercentage(READ_BACK)));
    }

    private static double amount(HeightTask task, double height) {
        return Field.of(task.at(height)).at(task.receiver()).values().getOrDefault(task.quantity(), 0.0);
    }
}
