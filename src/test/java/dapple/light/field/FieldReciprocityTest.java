package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What one Lambertian patch sends to another is what that would send back, with the same radiance: the integral of the
 * irradiance over the other patch, A₁ F₁₂ = A₂ F₂₁ [howell2016].
 */
class FieldReciprocityTest {
    private static final double ACCURACY = 1e-6;
    private static final double SHADED_ACCURACY = 1e-4;

    /** The patches stand apart by more than their size: so many nodes each way are far more than enough. */
    private static final double OPEN = 1e-5;

    /** Behind a solid the integrand over the receiving patch has bends, which the nodes see but roughly. */
    private static final double SHADED = 0.02;

    /** Parts of the receiving patch each way, with four nodes each. */
    private static final int PARTS = 6;

    private static final int SHADED_PARTS = 7;

    /** Its edge runs through the middle between the patches. */
    private static final Obstacle EDGE = new Obstacle.BoxObstacle(new Vec(1.05, 0, 0), new Vec(1, 2, 0.02), 0);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 12);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isReciprocalBetweenPatches(long seed) {
        Chance chance = new Chance(seed);
        SeededLamp one = patch(new Vec(0, 0, 0.5), new Vec(0, 0, -1), chance);
        SeededLamp other = patch(new Vec(0.1, 0.1, -0.5), Vec.UP, chance);
        double there = sent(one, other, List.of(), List.of());
        assertThat(sent(other, one, List.of(), List.of())).isCloseTo(there, within(OPEN * there));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isReciprocalThroughAMeshAndPastABox(long seed) {
        Chance chance = new Chance(seed);
        SeededLamp one = patch(new Vec(0, 0, 0.5), new Vec(0, 0, -1), chance);
        SeededLamp other = patch(new Vec(0.1, 0.1, -0.5), Vec.UP, chance);
        Cover.Plate plate = new Cover.Plate(new Vec(0, 0, 0.2), Vec.UP, new Vec(1, 0, 0), Optional.empty());
        List<Cover> covers = List.of(new Cover.Weave(plate, 0.0009, 0.00635, 1));
        List<Obstacle> obstacles = List.of(EDGE);
        double open = sent(one, other, covers, List.of());
        double there = sent(one, other, covers, obstacles);
        assertThat(there).isBetween(0.05 * open, 0.95 * open);
        assertThat(sent(other, one, covers, obstacles)).isCloseTo(there, within(SHADED * there));
    }

    /** A point's light on a small disc is the disc's light on the point: both are I · A · cos θ/r². */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.5, 1})
    void isReciprocalBetweenAPointAndASmallDisc(double distance) {
        Lamp disc = lamp(new Vec(0, 0, 0), new Vec(0, 0, -1), new Source.Disc(0.001));
        Lamp spot = lamp(new Vec(0.1, 0, -distance), Vec.UP, new Source.Spot(new Beam.Power(1)));
        double there = on(new Scene(ACCURACY, List.of(disc), List.of(), List.of()), spot.centre(), Vec.UP);
        double back = on(new Scene(ACCURACY, List.of(spot), List.of(), List.of()), disc.centre(), new Vec(0, 0, -1));
        assertThat(there).isCloseTo(back * Math.PI * 1e-6, within(1e-4 * there));
    }

    /** A disc or a rectangle. */
    private static SeededLamp patch(Vec centre, Vec facing, Chance chance) {
        return SeededLamp.random("patch", 3 + chance.below(2), centre, chance.about(facing, 0.2), chance);
    }

    /** What all places of a patch get of another, weighted by area. */
    private static double sent(SeededLamp from, SeededLamp to, List<Cover> covers, List<Obstacle> obstacles) {
        boolean shaded = !obstacles.isEmpty();
        int parts = shaded ? SHADED_PARTS : PARTS;
        Scene scene = new Scene(
                shaded ? SHADED_ACCURACY : ACCURACY,
                List.of(from.emitting(1).lamp()),
                covers.stream().map(Cover::filter).toList(),
                obstacles.stream().map(Obstacle::solid).toList());
        Field field = Field.of(scene);
        Vec facing = to.lamp().aim();
        double sum = 0;
        for (int column = 0; column < 4 * parts; column++) {
            for (int row = 0; row < 4 * parts; row++) {
                double u = node(column, parts);
                double v = node(row, parts);
                double share = Cells.WEIGHTS[column % 4] * Cells.WEIGHTS[row % 4] / parts / parts;
                double area = to.surface().intensity(u, v, facing);
                sum += share * area * on(field, to.surface().place(u, v), facing);
            }
        }
        return sum;
    }

    private static double node(int index, int parts) {
        int part = index / 4;
        return (part + Cells.NODES[index % 4]) / parts;
    }

    private static double on(Scene scene, Vec place, Vec normal) {
        return on(Field.of(scene), place, normal);
    }

    private static double on(Field field, Vec place, Vec normal) {
        return field.at(new Receiver(place, new Facing.Direction(normal)))
                .values()
                .getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }

    private static Lamp lamp(Vec centre, Vec aim, Source source) {
        return new Lamp("lamp", centre, aim, source, List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
    }
}
