package dapple.light.zone;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.cover.Filter;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A floor of 1 m by 0.5 m, lit on the left, dark from x = 0.6 on. */
class WaysTest {
    private static final ZoneTarget TARGET = new ZoneTarget(new Interval(3, 7), 0.5, 8);
    private static final Body BODY = new Body(0.2, 1);

    private final Lattice lattice = new Lattice(new Vec(0, 0, 0), 0.02, 51, 26, 11);
    private final RestingSurface floor =
            new RestingSurface(new Vec(0, 0, 0), new Vec(0, 0, 1), Filter.Rectangle.between(0, 0, 1, 0.5));

    private static double light(Vec place) {
        return place.x() < 0.3 ? 5 : place.x() < 0.6 ? 1 : 0;
    }

    private Ways ways(ToDoubleFunction<Vec> light, Solid... solids) {
        Survey survey = new Survey(lattice, List.of(solids), Optional.of(new Footing(0.05, List.of(), List.of())));
        for (int row = 0; row < lattice.rows(); row++) {
            survey.row(row, index -> true);
        }
        return new Ways(ZoneMap.of(survey.space(), index -> light.applyAsDouble(lattice.place(index)), TARGET));
    }

    private boolean leadOut(ToDoubleFunction<Vec> light, Body body, Solid... solids) {
        SurfaceLight onFloor = Surfaces.lit(floor, body, TARGET.basking(), light);
        return ways(light, solids).leadOut(Surfaces.patch(onFloor, body).orElseThrow(), body);
    }

    @Test
    void anOpenFloorLeadsFromLightToShade() {
        assertThat(leadOut(WaysTest::light, BODY)).isTrue();
    }

    @Test
    void aWallOverTheCeilingClosesTheWay() {
        assertThat(leadOut(place -> place.x() > 0.39 && place.x() < 0.43 ? 9 : light(place), BODY))
                .isFalse();
    }

    @Test
    void lightAboveTheTargetDoesNotCloseIt() {
        assertThat(leadOut(place -> place.x() > 0.39 && place.x() < 0.43 ? 8 : light(place), BODY))
                .isTrue();
    }

    @Test
    void aGapInTheWallOpensItAgain() {
        assertThat(leadOut(place -> place.x() > 0.39 && place.x() < 0.43 && place.y() > 0.01 ? 9 : light(place), BODY))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.002})
    void aSolidWallClosesTheWayHoweverThin(double thickness) {
        Box wall = Box.of(new Vec(0.45, -1, -1), new Vec(0.45 + thickness, 1, 1), 0);
        assertThat(leadOut(WaysTest::light, BODY, wall)).isFalse();
    }

    @Test
    void whatIsHigherThanTheReachIsNoWay() {
        Box wall = Box.of(new Vec(0.45, -1, -1), new Vec(0.46, 1, 0.1), 0);
        assertThat(leadOut(WaysTest::light, BODY, wall)).isFalse();
    }

    /** The shade is 0.4 m wide; on its lattice of 0.02 m a disc may seem too large by up to 3 diagonals. */
    @ParameterizedTest
    @CsvSource({"0.2, true", "0.31, true", "0.401, false"})
    void theShadeMustHaveRoomForTheBody(double lengthMetres, boolean leads) {
        assertThat(leadOut(WaysTest::light, new Body(lengthMetres, 1))).isEqualTo(leads);
    }

    @Test
    void aWallThroughTheShadeTakesItsRoom() {
        Box wall = Box.of(new Vec(0.795, 0.1, -1), new Vec(0.797, 1, 1), 0);
        assertThat(leadOut(WaysTest::light, new Body(0.3, 1), wall)).isFalse();
    }

    @Test
    void aPatchFarFromTheLatticeHasNoWay() {
        RestingSurface high =
                new RestingSurface(new Vec(0, 0, 5), new Vec(0, 0, 1), Filter.Rectangle.between(0, 0, 1, 0.5));
        BaskingPatch patch = Surfaces.patch(Surfaces.lit(high, BODY, TARGET.basking(), WaysTest::light), BODY)
                .orElseThrow();
        assertThat(ways(WaysTest::light).areBeside(patch)).isFalse();
        assertThat(ways(WaysTest::light).leadOut(patch, BODY)).isFalse();
    }

    @Test
    void aSurfaceIsLeftOnItsOwnSideAlone() {
        RestingSurface under =
                new RestingSurface(new Vec(0, 0, -0.001), new Vec(0, 0, -1), Filter.Rectangle.between(0, 0, 1, 0.5));
        BaskingPatch patch = Surfaces.patch(Surfaces.lit(under, BODY, TARGET.basking(), WaysTest::light), BODY)
                .orElseThrow();
        assertThat(ways(WaysTest::light).areBeside(patch)).isFalse();
    }

    @Test
    void aGradientIsThereAcrossWhateverIsOverTheCeiling() {
        ToDoubleFunction<Vec> light = place -> place.x() > 0.39 && place.x() < 0.43 ? 9 : light(place);
        assertThat(ways(light).leadFromBrightest()).isTrue();
        assertThat(ways(light)
                        .leadFrom(Surfaces.lit(floor, BODY, TARGET.basking(), light)
                                .brightest()
                                .orElseThrow()))
                .isTrue();
    }

    @Test
    void withoutShadeThereIsNoGradient() {
        assertThat(ways(place -> 1 + light(place)).leadFromBrightest()).isFalse();
    }

    @Test
    void aSolidWallEndsAGradient() {
        Box wall = Box.of(new Vec(0.45, -1, -1), new Vec(0.451, 1, 1), 0);
        assertThat(ways(WaysTest::light, wall).leadFromBrightest()).isFalse();
    }
}
