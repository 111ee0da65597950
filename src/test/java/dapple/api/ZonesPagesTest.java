package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.testing.PagesTest;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.test.web.servlet.ResultActions;
import tools.jackson.databind.JsonNode;

/**
 * A lamp at 0.5 m over a floor that gives 1/d² in all directions below it: the largest irradiance on any plane is 4 in the
 * middle of the floor and 3 on a circle of radius √(1/3 − 1/4) m around it.
 */
@PagesTest
class ZonesPagesTest extends ProgramPages {
    private static final double RADIUS = Math.sqrt(1.0 / 3 - 0.25);

    /** Of a patch's area: places are counted. */
    private static final double COUNTING = 0.005;

    private static final String LAMP = """
            {"id":"NAME","centre":[X,0,0.5],"aim":[0,0,-1],"source":{"shape":"beam","exponent":0},
            "output":[{"quantity":"uvi","intensity":1},{"quantity":"illuminance","intensity":100}]}""";

    private static final String GRID =
            "\"grid\":{\"from\":[-0.8,-0.6,0],\"to\":[0.8,0.6,0.4],\"step\":0.05,\"facing\":\"maximum\"}";

    private static final String ZONES = "\"quantity\":\"uvi\",\"basking\":[3,5.1],\"shade\":[0,1.9],\"ceiling\":6";

    private static final String FLOOR =
            "\"surface\":{\"point\":[0,0,0],\"normal\":[0,0,1],\"within\":[[-0.65,-0.3],[0.65,0.3]]}";

    @Test
    void aRoundSpotOnTheFloorIsThePatch() throws Exception {
        JsonNode patch = zones(ZONES + ",\"bodyLength\":0.4," + FLOOR).path("patch");
        double area = Math.PI * RADIUS * RADIUS;
        assertThat(patch.path("area").doubleValue()).isEqualTo(area, within(COUNTING * area));
        double step = patch.path("step").doubleValue();
        assertThat(step).isLessThanOrEqualTo(0.004);
        assertThat(patch.path("largestDisc").doubleValue()).isBetween(2 * RADIUS - 3 * Math.sqrt(2) * step, 2 * RADIUS);
        for (int axis = 0; axis < 3; axis++) {
            assertThat(patch.path("middle").path(axis).doubleValue()).isEqualTo(0, within(5 * step));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.55, true", "0.58, false"})
    void aBodyFitsUpToTheSpotsDiameter(double lengthMetres, boolean fits) throws Exception {
        JsonNode patch =
                zones(ZONES + ",\"bodyLength\":" + lengthMetres + "," + FLOOR).path("patch");
        assertThat(patch.path("bodyFits").booleanValue()).isEqualTo(fits);
        assertThat(patch.path("variation").isNull()).isEqualTo(!fits);
    }

    @Test
    void aBodyThatWantsEvenerLightDoesNotFit() throws Exception {
        JsonNode patch =
                zones(ZONES + ",\"bodyLength\":0.4,\"evenness\":0.05," + FLOOR).path("patch");
        double edge = 1 / (0.25 + 0.04);
        assertThat(patch.path("variation").doubleValue()).isEqualTo((4 - edge) / (4 + edge), within(0.003));
        assertThat(patch.path("bodyFits").booleanValue()).isFalse();
    }

    @Test
    void theSharesAreThoseOfTheGridsPlaces() throws Exception {
        JsonNode zones = zones(ZONES + ",\"bodyLength\":0.2");
        double[] amounts = places().mapToDouble(ZonesPagesTest::amount).toArray();
        assertThat(zones.path("places").intValue()).isEqualTo(amounts.length);
        assertThat(share(zones, "overCeiling")).isEqualTo(share(amounts, 6, 1e9));
        assertThat(share(zones, "aboveTarget")).isEqualTo(share(amounts, 5.1, 6));
        assertThat(share(zones, "basking")).isEqualTo(share(amounts, 3, 5.1));
        assertThat(share(zones, "gradient")).isEqualTo(share(amounts, 1.9, 3));
        assertThat(share(zones, "shade")).isEqualTo(share(amounts, 0, 1.9));
    }

    /** The squared distances of the grid's places from the lamp; none is such that a limit is met exactly. */
    private static Stream<Double> places() {
        return IntStream.range(0, 33 * 25 * 9).mapToObj(index -> {
            double x = -0.8 + 0.05 * (index % 33);
            int row = index / 33 % 25;
            double y = -0.6 + 0.05 * row;
            int layer = index / (33 * 25);
            double z = 0.05 * layer - 0.5;
            return x * x + y * y + z * z;
        });
    }

    private static double amount(double squareMetres) {
        return 1 / squareMetres;
    }

    private static double share(JsonNode zones, String name) {
        return zones.path("shares").path(name).doubleValue();
    }

    private static double share(double[] amounts, double above, double to) {
        return (double) Arrays.stream(amounts)
                        .filter(amount -> amount > above && amount <= to)
                        .count()
                / amounts.length;
    }

    @ParameterizedTest
    @ValueSource(strings = {"[0,0,1]", "[1,0,0]", "\"all\"", "\"lamp:a\""})
    void zonesAskForTheBestPlaneWhateverTheGridFaces(String facing) throws Exception {
        String members = ZONES + ",\"bodyLength\":0.4," + FLOOR;
        JsonNode answer = answer(scene(lamp("a", 0), GRID.replace("\"maximum\"", facing), members));
        assertThat(answer.path("zones")).isEqualTo(zones(members));
    }

    @Test
    void askedTwiceTheAnswerIsTheSame() throws Exception {
        String members = ZONES + ",\"bodyLength\":0.4," + FLOOR;
        assertThat(zones(members)).isEqualTo(zones(members));
    }

    @Test
    void fromTheSpotAWayLeadsToTheCorners() throws Exception {
        JsonNode zones = zones(ZONES + ",\"bodyLength\":0.2,\"reach\":0.05," + FLOOR);
        assertThat(zones.path("wayOut").booleanValue()).isTrue();
        assertThat(zones.path("gradientPresent").booleanValue()).isTrue();
        assertThat(zones.path("places").intValue()).isEqualTo(33 * 25 * 2);
    }

    @Test
    void aBodyTooLargeForTheShadeHasNoWayOut() throws Exception {
        JsonNode zones = zones(ZONES + ",\"bodyLength\":0.8,\"reach\":0.05," + FLOOR);
        assertThat(zones.path("wayOut").booleanValue()).isFalse();
        assertThat(zones.path("gradientPresent").booleanValue()).isTrue();
    }

    @Test
    void glassAroundTheSpotClosesTheWay() throws Exception {
        String glass = """
                "obstacles":[{"shape":"box","min":[-0.402,-0.4,0],"max":[-0.4,0.4,0.1]},
                {"shape":"box","min":[0.4,-0.4,0],"max":[0.402,0.4,0.1]},
                {"shape":"box","min":[-0.41,-0.412,0],"max":[0.41,-0.41,0.1]},
                {"shape":"box","min":[-0.41,0.41,0],"max":[0.41,0.412,0.1]}]""";
        String members = ZONES + ",\"bodyLength\":0.1,\"reach\":0.05," + FLOOR;
        JsonNode zones =
                answer(scene(lamp("a", 0), GRID + "," + glass, members)).path("zones");
        assertThat(zones.path("patch").path("bodyFits").booleanValue()).isTrue();
        assertThat(zones.path("wayOut").booleanValue()).isTrue();
        String closed = glass.replace("-0.4,0]", "-0.42,0]").replace("0.4,0.1]", "0.42,0.1]");
        JsonNode shut =
                answer(scene(lamp("a", 0), GRID + "," + closed, members)).path("zones");
        assertThat(shut.path("wayOut").booleanValue()).isFalse();
    }

    @Test
    void withoutASurfaceThereIsNeitherPatchNorWayOut() throws Exception {
        JsonNode zones = zones(ZONES + ",\"bodyLength\":0.2");
        assertThat(zones.has("patch")).isFalse();
        assertThat(zones.has("wayOut")).isFalse();
        assertThat(zones.path("gradientPresent").booleanValue()).isTrue();
    }

    @Test
    void whereNothingIsInsideTheTargetThePatchIsNull() throws Exception {
        JsonNode zones = zones(ZONES.replace("[3,5.1]", "[4.5,5.1]") + ",\"bodyLength\":0.2," + FLOOR);
        assertThat(zones.path("patch").isNull()).isTrue();
        assertThat(zones.path("wayOut").isNull()).isTrue();
        assertThat(zones.path("gradientPresent").booleanValue()).isFalse();
    }

    @Test
    void whereNothingIsReachableSharesAreNull() throws Exception {
        String inside = "\"obstacles\":[{\"shape\":\"box\",\"min\":[-2,-2,-1],\"max\":[2,2,0.45]}]";
        JsonNode zones = answer(scene(lamp("a", 0), GRID + "," + inside, ZONES + ",\"bodyLength\":0.2"))
                .path("zones");
        assertThat(zones.path("places").intValue()).isZero();
        assertThat(zones.path("shares").isNull()).isTrue();
    }

    @Test
    void thePatchIsOnTheSurfaceThatHasTheLargest() throws Exception {
        String surfaces = "\"surface\":[{\"point\":[0,0,0.35],\"normal\":[0,0,1],\"within\":[[-0.1,-0.1],[0.1,0.1]]},"
                + FLOOR.replace("\"surface\":", "") + "]";
        JsonNode patch = zones(ZONES + ",\"bodyLength\":0.4," + surfaces).path("patch");
        assertThat(patch.path("surface").intValue()).isEqualTo(1);
    }

    @Test
    void aPatchAwayFromTheGridIsWarnedOf() throws Exception {
        String below = FLOOR.replace("[0,0,0]", "[0,0,-0.07]");
        JsonNode answer = answer(scene(lamp("a", 0), GRID, ZONES + ",\"bodyLength\":0.4," + below));
        assertThat(answer.path("zones").path("wayOut").booleanValue()).isFalse();
        assertThat(answer.path("warnings").path(0).stringValue()).contains("no reachable place");
    }

    /** 300 lx at 3 UVI, so that a target from 350 lx on is a circle within the spot. */
    @Test
    void coincidenceIsTheShareOfThePatchThatHasEveryQuantity() throws Exception {
        String also = ",\"also\":[{\"quantity\":\"illuminance\",\"basking\":[350,1000]}]";
        JsonNode zones = zones(ZONES + ",\"bodyLength\":0.4," + FLOOR + also);
        double inner = 1 / 3.5 - 0.25;
        assertThat(zones.path("coincidence").doubleValue()).isEqualTo(inner / (RADIUS * RADIUS), within(2 * COUNTING));
    }

    /** Two equal circles at a distance d have the lens 2 R² arccos(d/2R) − d/2 √(4R² − d²) in common. */
    @ParameterizedTest
    @CsvSource({"0.1, true", "0.2, true", "0.25, false", "0.4, false", "0.7, false"})
    void twoLampsShareTheLensOfTheirSpots(double apart, boolean overlap) throws Exception {
        String lamps = lamp("a", -apart / 2) + "," + lamp("b", apart / 2);
        String members = ZONES.replace("\"ceiling\":6", "\"ceiling\":50") + ",\"bodyLength\":0.4,\"overlap\":0.5,";
        JsonNode pair = answer(scene(lamps, GRID, members + FLOOR))
                .path("zones")
                .path("overlaps")
                .path(0);
        double ratio = Math.min(1, apart / (2 * RADIUS));
        double lens = 2 * Math.acos(ratio) - 2 * ratio * Math.sqrt(1 - ratio * ratio);
        assertThat(pair.path("lamps").path(0).stringValue()).isEqualTo("a");
        assertThat(pair.path("share").doubleValue()).isEqualTo(lens / Math.PI, within(2 * COUNTING));
        assertThat(pair.path("overlap").booleanValue()).isEqualTo(overlap);
    }

    @Test
    void zonesWithoutAGridAreRefused() throws Exception {
        send(scene(lamp("a", 0), "\"receivers\":[]", ZONES + ",\"bodyLength\":0.2"))
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.pointer").value("/grid"));
    }

    private static String lamp(String id, double x) {
        return LAMP.replace("NAME", id).replace("X", String.valueOf(x));
    }

    private static String scene(String lamps, String more, String zones) {
        return "{\"version\":1,\"lamps\":[" + lamps + "]," + more + ",\"zones\":{" + zones + "}}";
    }

    private JsonNode zones(String members) throws Exception {
        return answer(scene(lamp("a", 0), GRID, members)).path("zones");
    }

    private JsonNode answer(String scene) throws Exception {
        return answer("/api/v1/light-field", scene);
    }

    private ResultActions send(String body) throws Exception {
        return send("/api/v1/light-field", body);
    }
}
