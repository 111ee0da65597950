package dapple.light.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dapple.light.cover.Filter;
import dapple.light.geometry.Box;
import dapple.light.geometry.Capsule;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SurveyTest {
    private static final double STEP = 0.02;

    /** 0.4 by 0.2 by 0.4 m from the origin. */
    private final Lattice lattice = new Lattice(new Vec(0, 0, 0), STEP, 21, 11, 21);

    private Space survey(List<Solid> solids, Optional<Footing> footing) {
        Survey survey = new Survey(lattice, solids, footing);
        for (int row = 0; row < lattice.rows(); row++) {
            survey.row(row, index -> solids.stream().noneMatch(solid -> solid.holds(lattice.place(index))));
        }
        return survey.space();
    }

    private Space survey(double reachMetres, Solid solid) {
        List<Solid> solids = List.of(solid);
        return survey(solids, Optional.of(new Footing(reachMetres, solids, List.of())));
    }

    private static Box shelf() {
        return Box.of(new Vec(0.1, 0.05, 0.19), new Vec(0.3, 0.15, 0.2), 0);
    }

    @ParameterizedTest
    @CsvSource({
        "0, true",
        "0.04, true",
        "0.06, true",
        "0.08, false",
        "0.18, false",
        "0.2, true",
        "0.26, true",
        "0.28, false"
    })
    void aGroundDwellerReachesAboveTheFloorAndAShelf(double height, boolean reaches) {
        int z = (int) Math.round(height / STEP);
        assertThat(survey(0.06, shelf()).isReachable(lattice.index(10, 5, z))).isEqualTo(reaches);
    }

    @Test
    void besideTheShelfNothingIsReachable() {
        assertThat(survey(0.06, shelf()).isReachable(lattice.index(1, 5, 11))).isFalse();
    }

    @Test
    void aPerchIsFootingAsWell() {
        Space space = survey(0.06, Capsule.of(new Vec(0.1, 0.1, 0.2), new Vec(0.3, 0.1, 0.3), 0.015));
        assertThat(space.isReachable(lattice.index(10, 5, 14))).isTrue();
        assertThat(space.isReachable(lattice.index(10, 5, 11))).isFalse();
    }

    @Test
    void aRestingSurfaceIsFootingWithoutASolid() {
        RestingSurface ramp = new RestingSurface(
                new Vec(0.2, 0.1, 0.2), new Vec(-1, 0, 2), Filter.Rectangle.between(0.1, 0, 0.3, 0.2));
        Space space = survey(List.of(), Optional.of(new Footing(0.06, List.of(), List.of(ramp))));
        assertThat(space.isReachable(lattice.index(10, 5, 10))).isTrue();
        assertThat(space.isReachable(lattice.index(14, 5, 13))).isTrue();
        assertThat(space.isReachable(lattice.index(14, 5, 11))).isFalse();
        assertThat(space.isReachable(lattice.index(17, 5, 13))).isFalse();
    }

    @Test
    void aClimberReachesAllThatIsOpen() {
        Space space = survey(List.of(shelf()), Optional.empty());
        for (int index = 0; index < lattice.size(); index++) {
            Vec place = lattice.place(index).plus(new Vec(0, 0, 1e-6));
            assertThat(space.isReachable(index)).isEqualTo(!shelf().holds(place));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void aWallThinnerThanAStepPartsTheNeighboursOnItsSides(int axis) {
        double[] low = {-1, -1, -1};
        double[] high = {1, 1, 1};
        low[axis] = 0.045;
        high[axis] = 0.047;
        Space space = survey(
                List.of(Box.of(new Vec(low[0], low[1], low[2]), new Vec(high[0], high[1], high[2]), 0)),
                Optional.empty());
        for (int index = 0; index < lattice.size(); index++) {
            int[] at = {lattice.x(index), lattice.y(index), lattice.z(index)};
            assertThat(space.isParted(index, axis)).isEqualTo(at[axis] == 2);
            assertThat(space.isParted(index, (axis + 1) % 3)).isFalse();
        }
    }

    static Stream<Random> chances() {
        return IntStream.range(0, 20).mapToObj(Random::new);
    }

    /** Boxes whose faces mostly lie on places of the lattice. */
    private static List<double[]> boxes(Random chance) {
        return IntStream.range(0, 6)
                .mapToObj(number -> new double[] {
                    STEP * chance.nextInt(18),
                    STEP * chance.nextInt(8),
                    STEP * chance.nextInt(8),
                    STEP * chance.nextInt(1, 8) / 2,
                    STEP * chance.nextInt(1, 6),
                    STEP * chance.nextInt(1, 6)
                })
                .toList();
    }

    private static Solid box(double[] box, boolean mirrored) {
        double low = mirrored ? 0.4 - box[0] - box[3] : box[0];
        return Box.of(new Vec(low, box[1], box[2]), new Vec(low + box[3], box[1] + box[4], box[2] + box[5]), 0);
    }

    @ParameterizedTest
    @MethodSource("chances")
    void aMirroredEnclosureHasMirroredWays(Random chance) {
        List<double[]> boxes = boxes(chance);
        List<Solid> solids = boxes.stream().map(box -> box(box, false)).toList();
        List<Solid> others = boxes.stream().map(box -> box(box, true)).toList();
        Space space = survey(solids, Optional.of(new Footing(0.04, solids, List.of())));
        Space mirrored = survey(others, Optional.of(new Footing(0.04, others, List.of())));
        for (int index = 0; index < lattice.size(); index++) {
            int there = lattice.index(20 - lattice.x(index), lattice.y(index), lattice.z(index));
            assertThat(mirrored.isReachable(there)).isEqualTo(space.isReachable(index));
            assertThat(mirrored.isParted(there, 1)).isEqualTo(space.isParted(index, 1));
            assertThat(mirrored.isParted(there, 2)).isEqualTo(space.isParted(index, 2));
            if (lattice.x(index) < 20 && space.isReachable(index) && space.isReachable(index + 1)) {
                assertThat(mirrored.isParted(there - 1, 0)).isEqualTo(space.isParted(index, 0));
            }
        }
    }

    /** Boxes of 0.1 m on the floor whose faces lie on places of the lattice. */
    private static Box block(double x) {
        return Box.of(new Vec(x, 0.04, 0), new Vec(x + 0.1, 0.16, 0.1), 0);
    }

    @ParameterizedTest
    @CsvSource({
        "10, 5, 0, false", // under a block that stands on the floor
        "10, 5, 5, true", // on it
        "10, 1, 0, true", // before it
        "10, 2, 0, true", // at its front
        "10, 8, 0, true", // at its back
        "9, 5, 0, false", // under the seam of both
        "9, 5, 2, false", // in the seam
        "9, 5, 5, true", // on the seam
        "9, 2, 2, false", // beside the seam, higher than the reach above the floor
        "9, 2, 5, true" // on the edge
    })
    void whatTouchesIsReachableWhereThereIsAir(int x, int y, int z, boolean reachable) {
        List<Solid> solids = List.of(block(0.08), block(0.18));
        Space space = survey(solids, Optional.of(new Footing(0.02, solids, List.of())));
        assertThat(space.isReachable(lattice.index(x, y, z))).isEqualTo(reachable);
    }

    @Test
    void theSeamOfTwoThinPanesIsNoWay() {
        Space space = survey(
                List.of(
                        Box.of(new Vec(0.045, -1, 0), new Vec(0.047, 0.1, 1), 0),
                        Box.of(new Vec(0.045, 0.1, 0), new Vec(0.047, 1, 1), 0)),
                Optional.empty());
        assertThat(space.isParted(lattice.index(2, 5, 0), 0)).isTrue();
        assertThat(space.isParted(lattice.index(2, 5, 3), 0)).isTrue();
    }

    @Test
    void theEndOfAPaneLeavesAWay() {
        Space space = survey(List.of(Box.of(new Vec(0.045, -1, 0), new Vec(0.047, 0.1, 0.2), 0)), Optional.empty());
        assertThat(space.isParted(lattice.index(2, 4, 0), 0)).isTrue();
        assertThat(space.isParted(lattice.index(2, 5, 0), 0)).isFalse();
        assertThat(space.isParted(lattice.index(2, 4, 10), 0)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void aReachThatIsNoneIsRefused(double reach) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Footing(reach, List.of(), List.of()));
    }
}
