package dapple.light.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class BaskingPatchTest {
    /** Of the area: places are counted, about a hundred across. */
    private static final double COUNTING = 0.005;

    /** Steps by which the largest disc may be too small: twice one and a half diagonals. */
    private static final double STEPS = 3 * Math.sqrt(2);

    private static final double ROUNDING = 1e-9;
    private static final Interval TARGET = new Interval(5, 20);
    private static final Vec MIDDLE = new Vec(0.03, -0.01, 0);

    static Stream<Random> chances() {
        return IntStream.range(0, 10).mapToObj(Random::new);
    }

    private static BaskingPatch patch(RestingSurface surface, Body body, ToDoubleFunction<Vec> light) {
        return Surfaces.patch(Surfaces.lit(surface, body, TARGET, light), body).orElseThrow();
    }

    private static Body body(double lengthMetres) {
        return new Body(lengthMetres, Body.USUAL_EVENNESS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.2, 0.37})
    void aRoundSpotHasTheAreaOfItsCircle(double radius) {
        double area = patch(Surfaces.level(), body(0.2), Surfaces.spot(MIDDLE, radius))
                .areaSquareMetres();
        assertThat(area).isEqualTo(Math.PI * radius * radius, within(COUNTING * area));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void theLargestDiscInARoundSpotIsTheSpotToAFewSteps(Random chance) {
        double radius = 0.1 + 0.3 * chance.nextDouble();
        Vec middle = new Vec(0.1 * chance.nextDouble(), 0.1 * chance.nextDouble(), 0);
        BaskingPatch patch = patch(Surfaces.level(), body(0.2), Surfaces.spot(middle, radius));
        assertThat(patch.largestDiscMetres()).isBetween(2 * radius - STEPS * patch.stepMetres(), 2 * radius + ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"0.38, true", "0.401, false"})
    void aBodyHasRoomUpToTheSpotsDiameter(double lengthMetres, boolean fits) {
        Body patient = new Body(lengthMetres, 1);
        assertThat(patch(Surfaces.level(), patient, Surfaces.spot(MIDDLE, 0.2)).fits())
                .isEqualTo(fits);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.2, 0.3, 0.38})
    void theMostEvenDiscLiesInTheMiddleOfASpot(double lengthMetres) {
        BaskingPatch patch = patch(Surfaces.level(), body(lengthMetres), Surfaces.spot(MIDDLE, 0.2));
        double out = lengthMetres / 2 / 0.2;
        double edge = 10 - 5 * out * out;
        assertThat(patch.variation().orElseThrow()).isEqualTo((10 - edge) / (10 + edge), within(0.01));
        assertThat(patch.middle().minus(MIDDLE).length()).isLessThan(STEPS * patch.stepMetres());
    }

    /** On a slope the light of a disc of 0.355 m varies by a quarter to either side. */
    @ParameterizedTest
    @CsvSource({"0.35, true", "0.36, false"})
    void anUnevenDiscDoesNotFit(double lengthMetres, boolean fits) {
        double wide = 1.01 * lengthMetres / 2;
        RestingSurface strip = new RestingSurface(
                new Vec(0, 0, 0), new Vec(0, 0, 1), Filter.Rectangle.between(-wide, -0.5, wide, 0.5));
        SurfaceLight light = Surfaces.lit(
                strip, body(lengthMetres), new Interval(1, 20), place -> 10 + 2.5 * place.x() / (0.355 / 2));
        assertThat(Surfaces.patch(light, body(lengthMetres)).orElseThrow().fits())
                .isEqualTo(fits);
    }

    @Test
    void aWholeSurfaceHasItsOwnArea() {
        BaskingPatch patch = patch(Surfaces.level(), body(0.2), place -> 10);
        assertThat(patch.areaSquareMetres()).isEqualTo(1, within(ROUNDING));
        assertThat(patch.largestDiscMetres()).isEqualTo(1, within(ROUNDING));
        assertThat(patch.variation().orElseThrow()).isZero();
    }

    @Test
    void aSurfaceThatLeansOneWayIsLargerThanWhatItCovers() {
        BaskingPatch patch = patch(Surfaces.leaning(new Vec(0.6, 0, 0.8)), body(0.2), place -> 10);
        assertThat(patch.areaSquareMetres()).isEqualTo(1 / 0.8, within(ROUNDING));
    }

    @Test
    void aSurfaceThatLeansBothWaysIsAParallelogram() {
        Vec normal = new Vec(0.4, 0.3, 0.9).unit();
        BaskingPatch patch = patch(Surfaces.leaning(normal), body(0.2), place -> 10);
        assertThat(patch.areaSquareMetres()).isEqualTo(1 / normal.z(), within(COUNTING / normal.z()));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void aSpotOnALeaningPlaneIsAsLargeAsOnALevelOne(Random chance) {
        Vec normal = new Vec(chance.nextDouble() - 0.5, chance.nextDouble() - 0.5, 1);
        BaskingPatch patch = patch(Surfaces.leaning(normal), body(0.2), Surfaces.spot(new Vec(0, 0, 0), 0.3));
        double area = Math.PI * 0.3 * 0.3;
        assertThat(patch.areaSquareMetres()).isEqualTo(area, within(COUNTING * area));
        assertThat(patch.largestDiscMetres()).isBetween(0.6 - STEPS * patch.stepMetres(), 0.6 + ROUNDING);
    }

    @ParameterizedTest
    @MethodSource("chances")
    void mirroringAndTurningChangeNothingButThePlace(Random chance) {
        Vec one = new Vec(0.6 * chance.nextDouble() - 0.3, 0.6 * chance.nextDouble() - 0.3, 0);
        Vec other = new Vec(0.6 * chance.nextDouble() - 0.3, 0.6 * chance.nextDouble() - 0.3, 0);
        ToDoubleFunction<Vec> light = place -> Surfaces.spot(one, 0.15).applyAsDouble(place)
                + 0.7 * Surfaces.spot(other, 0.2).applyAsDouble(place);
        BaskingPatch patch = patch(Surfaces.level(), body(0.25), light);
        BaskingPatch mirrored =
                patch(Surfaces.level(), body(0.25), place -> light.applyAsDouble(new Vec(-place.x(), place.y(), 0)));
        BaskingPatch turned =
                patch(Surfaces.level(), body(0.25), place -> light.applyAsDouble(new Vec(place.y(), -place.x(), 0)));
        assertThat(mirrored.areaSquareMetres()).isEqualTo(patch.areaSquareMetres(), within(ROUNDING));
        assertThat(turned.areaSquareMetres()).isEqualTo(patch.areaSquareMetres(), within(ROUNDING));
        assertThat(mirrored.largestDiscMetres()).isEqualTo(patch.largestDiscMetres(), within(2 * patch.stepMetres()));
        assertThat(turned.largestDiscMetres()).isEqualTo(patch.largestDiscMetres(), within(2 * patch.stepMetres()));
    }

    @Test
    void ofTwoSpotsTheLargerIsThePatch() {
        ToDoubleFunction<Vec> light = place -> Math.max(
                Surfaces.spot(new Vec(-0.25, 0, 0), 0.1).applyAsDouble(place),
                Surfaces.spot(new Vec(0.2, 0, 0), 0.15).applyAsDouble(place));
        BaskingPatch patch = patch(Surfaces.level(), body(0.2), light);
        assertThat(patch.areaSquareMetres()).isEqualTo(Math.PI * 0.15 * 0.15, within(COUNTING * 0.1));
        assertThat(patch.middle().x()).isEqualTo(0.2, within(STEPS * patch.stepMetres()));
    }

    @Test
    void aSpotThatIsTooStrongInTheMiddleIsARing() {
        Body body = body(0.1);
        SurfaceLight light =
                Surfaces.lit(Surfaces.level(), body, new Interval(5, 8.75), Surfaces.spot(new Vec(0, 0, 0), 0.4));
        BaskingPatch ring = Surfaces.patch(light, body).orElseThrow();
        double area = Math.PI * (0.4 * 0.4 - 0.2 * 0.2);
        assertThat(ring.areaSquareMetres()).isEqualTo(area, within(COUNTING * area));
        assertThat(ring.largestDiscMetres()).isBetween(0.2 - STEPS * ring.stepMetres(), 0.2 + ROUNDING);
    }

    @Test
    void whatStandsOnTheSurfaceTakesItsRoom() {
        ToDoubleFunction<Vec> light = place -> Math.hypot(place.x(), place.y()) < 0.1 ? Double.NaN : 10;
        BaskingPatch patch = patch(Surfaces.level(), body(0.2), light);
        assertThat(patch.areaSquareMetres()).isEqualTo(1 - Math.PI * 0.01, within(COUNTING * 0.1));
    }

    @Test
    void inTheDarkThereIsNoPatch() {
        Body body = body(0.2);
        assertThat(Surfaces.patch(Surfaces.lit(Surfaces.level(), body, TARGET, place -> 0), body))
                .isEmpty();
    }

    @Test
    void fewPlacesAreMeasuredAwayFromTheBorder() {
        SurfaceLight light = Surfaces.lit(Surfaces.level(), body(0.2), TARGET, Surfaces.spot(MIDDLE, 0.2));
        assertThat(light.measured()).isLessThan(light.lattice().size() / 4);
    }

    @Test
    void aSmallBodyOnALargeSurfaceKeepsWithinHalfAMillionPlaces() {
        SurfaceLattice lattice = SurfaceLattice.of(Surfaces.level(), 0.001);
        assertThat(lattice.size()).isBetween(450_000, 500_000);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aBodyWithoutASizeIsRefused(double lengthMetres) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Body(lengthMetres, 0.25));
    }

    @Test
    void anUprightSurfaceIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Surfaces.leaning(new Vec(1, 0, 0)));
    }
}
