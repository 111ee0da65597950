package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Source;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** What a mesh and a pane let through, against tables, another formula and a simulation by rays. */
class FilterLawTest {
    private static final double METRES_PER_INCH = 0.0254;

    /** Weavers' tables round the opening before they square it. */
    private static final double TABLE_PERCENT = 0.3;

    /** Half a unit of the last digit. */
    private static final double SIX_DIGITS = 5e-7;

    /** Rays to a side of a square of one pitch: 640,000 in all, one in each small square, hit or not to 0.0003. */
    private static final int RAYS = 800;

    private static final double SIMULATED = 1e-3;

    private static final Filter.Plane PLANE = Filter.Plane.of(new Vec(0, 0, -0.2), Vec.UP, Optional.empty());
    private static final Source POINT = new Source.Spot(new Beam.Power(0));

    @ParameterizedTest
    @CsvFileSource(resources = "wire-cloth-published.csv", useHeadersInDisplayName = true)
    void isTheOpenAreaOfWireCloth(double meshesPerInch, double wireInches, double openAreaPercent) {
        Filter mesh = new Filter.Mesh(PLANE, wireInches * METRES_PER_INCH, METRES_PER_INCH / meshesPerInch, 1);
        assertThat(100 * passed(mesh, 0, 0)).isCloseTo(openAreaPercent, within(TABLE_PERCENT));
    }

    @ParameterizedTest
    @CsvSource({
        "0.9, 6.35, 0, 0",
        "0.9, 6.35, 30, 0",
        "0.9, 6.35, 60, 0",
        "0.9, 6.35, 60, 45",
        "0.9, 6.35, 75, 20",
        "0.25, 2.5, 50, 70",
        "0.45, 1.5, 60, 10",
        "0.45, 1.5, 75, 45"
    })
    void isWhatRaysFindBetweenTheWires(
            double wireMillimetres, double pitchMillimetres, double incidenceDegrees, double azimuthDegrees) {
        Filter mesh = new Filter.Mesh(PLANE, wireMillimetres / 1000, pitchMillimetres / 1000, 1);
        double found = simulated(wireMillimetres / pitchMillimetres, direction(incidenceDegrees, azimuthDegrees));
        assertThat(passed(mesh, incidenceDegrees, azimuthDegrees)).isCloseTo(found, within(SIMULATED));
    }

    /** Straight round wires of pitch 1 along x and along y; a ray is stopped that comes nearer than half a wire to one. */
    private static double simulated(double wire, Vec ray) {
        Random chance = new Random(11);
        int passed = 0;
        for (int column = 0; column < RAYS; column++) {
            for (int row = 0; row < RAYS; row++) {
                Vec place = new Vec((column + chance.nextDouble()) / RAYS, (row + chance.nextDouble()) / RAYS, 0);
                boolean stopped =
                        isStopped(place, ray, new Vec(1, 0, 0), wire) || isStopped(place, ray, new Vec(0, 1, 0), wire);
                passed += stopped ? 0 : 1;
            }
        }
        return (double) passed / RAYS / RAYS;
    }

    /** By the wires through 0 and through 1: the ray crosses the plane of their axes between those two. */
    private static boolean isStopped(Vec place, Vec ray, Vec along, double wire) {
        Vec across = new Vec(along.y(), along.x(), 0);
        return distance(place, ray, along) < wire / 2 || distance(place.minus(across), ray, along) < wire / 2;
    }

    /** Of two straight lines, one through a place and one through the origin. */
    private static double distance(Vec place, Vec one, Vec other) {
        return Math.abs(place.dot(one.cross(other).unit()));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "pane-published.csv", useHeadersInDisplayName = true)
    void isThatOfAPane(
            double index,
            double absorptionPerMetre,
            double thicknessMetres,
            double incidenceDegrees,
            double transmittance) {
        Filter pane = new Filter.Pane(PLANE, index, thicknessMetres, Map.of(Quantity.UV_INDEX, absorptionPerMetre));
        assertThat(passed(pane, incidenceDegrees, 33)).isCloseTo(transmittance, within(SIX_DIGITS));
    }

    private static double passed(Filter filter, double incidenceDegrees, double azimuthDegrees) {
        Vec direction = direction(incidenceDegrees, azimuthDegrees);
        Vec place = direction.times(0.5 / -direction.z());
        double distance = place.length();
        return Alone.lightThrough(filter, POINT, place) * distance * distance;
    }

    private static Vec direction(double incidenceDegrees, double azimuthDegrees) {
        double incidence = Math.toRadians(incidenceDegrees);
        double azimuth = Math.toRadians(azimuthDegrees);
        return new Vec(
                Math.sin(incidence) * Math.cos(azimuth), Math.sin(incidence) * Math.sin(azimuth), -Math.cos(incidence));
    }
}
