package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.drawing.FieldMap.Band;
import dapple.drawing.FieldMap.Limit;
import dapple.light.quantity.Interval;
import dapple.light.zone.ZoneTarget;
import java.awt.geom.Path2D;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Fields that are known everywhere, on 1.5 by 0.7 m; marching squares must find their levels within half a step. */
class FieldMapTest {
    private static final double STEP = 0.02;
    private static final LitPlane.Grid GRID = LitPlane.Grid.over(new Place(0, 0), new Place(1.5, 0.7), STEP);
    private static final Frame FRAME = Frame.around(List.of(new Place(0, 0), new Place(1.5, 0.7)), 0);
    private static final ZoneTarget TARGET = Figures.TARGET;
    private static final Place SUMMIT = new Place(0.7, 0.4);

    /** Half a step of the lattice, and what thinning and rounding may add, in units. */
    private static final double NEAR = STEP / 2 * FRAME.unitsPerMetre() + 0.5;

    private static final Pattern SUBPATH = Pattern.compile("M(\\S+) (\\S+?)l([^zM]*)z?");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    private static double away(Place place) {
        return Math.hypot(place.acrossMetres() - SUMMIT.acrossMetres(), place.upMetres() - SUMMIT.upMetres());
    }

    /** 8 at the summit, 0 at 0.4 m from it. */
    private static double cone(Place place) {
        return Math.max(0, 8 - 20 * away(place));
    }

    private static FieldMap map(LitPlane.Amount amount) {
        return FieldMap.of(new LightFigure(LitPlane.of(GRID, amount), TARGET, Map.of()), FRAME);
    }

    private static Path2D area(String path) {
        Path2D area = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        SUBPATH.matcher(path).results().forEach(found -> {
            double x = Double.parseDouble(found.group(1));
            double y = Double.parseDouble(found.group(2));
            area.moveTo(x, y);
            double[] ways = NUMBER.matcher(found.group(3))
                    .results()
                    .map(MatchResult::group)
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            for (int index = 0; index + 1 < ways.length; index += 2) {
                x += ways[index];
                y += ways[index + 1];
                area.lineTo(x, y);
            }
            area.closePath();
        });
        return area;
    }

    /** Places spread over the map by chance, with a fixed seed. */
    static Stream<Place> places() {
        Random chance = new Random(5);
        return IntStream.range(0, 400)
                .mapToObj(index -> new Place(0.001 + 1.498 * chance.nextDouble(), 0.001 + 0.698 * chance.nextDouble()));
    }

    private static boolean holds(String path, Place place) {
        Spot spot = FRAME.spot(place);
        return area(path).contains(spot.x(), spot.y());
    }

    @Test
    void theFirstBandCoversTheWholeMap() {
        Band first = map(FieldMapTest::cone).bands().get(0);
        assertThat(places()).allMatch(place -> holds(first.path(), place));
    }

    @Test
    void everyBandLiesInTheOneBeforeIt() {
        List<Band> bands = map(FieldMapTest::cone).bands();
        for (int index = 1; index < bands.size(); index++) {
            Band outer = bands.get(index - 1);
            Band inner = bands.get(index);
            assertThat(places().filter(place -> holds(inner.path(), place)))
                    .allMatch(place -> holds(outer.path(), place));
        }
    }

    /** The slope is 20 per metre, so half a step is 0.2. */
    @Test
    void aBandHoldsWhatReachesItsLevel() {
        for (Band band : map(FieldMapTest::cone).bands().subList(1, 12)) {
            assertThat(places().filter(place -> cone(place) > band.from() + 0.2))
                    .allMatch(place -> holds(band.path(), place));
            assertThat(places().filter(place -> cone(place) < band.from() - 0.2))
                    .noneMatch(place -> holds(band.path(), place));
        }
    }

    /** A cone that gives 2 at 0.3 m from its summit. */
    @Test
    void theLineOfAConeIsACircle() {
        FieldMap.Line low = line(map(FieldMapTest::cone), Limit.LOW);
        assertThat(low.spots()).hasSize(1);
        assertThat(low.spots().get(0))
                .allSatisfy(spot -> assertThat(spot.distance(FRAME.spot(SUMMIT)))
                        .isCloseTo(0.3 * FRAME.unitsPerMetre(), within(NEAR)));
    }

    /** A plane that grows by 4 per metre to the right reaches 2 at 0.5 m. */
    @Test
    void theLineOfAPlaneIsStraight() {
        FieldMap.Line low = line(map(place -> 4 * place.acrossMetres()), Limit.LOW);
        assertThat(low.spots()).hasSize(1);
        assertThat(low.spots().get(0)).allSatisfy(spot -> assertThat(spot.x()).isCloseTo(FRAME.x(0.5), within(NEAR)));
    }

    private static FieldMap.Line line(FieldMap map, Limit limit) {
        return map.lines().stream()
                .filter(line -> line.limit() == limit)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLimitsLinePartsMoreFromLess() {
        for (FieldMap.Line line : map(FieldMapTest::cone).lines()) {
            double radius = (8 - line.amount()) / 20 * FRAME.unitsPerMetre();
            Spot summit = FRAME.spot(SUMMIT);
            assertThat(line.spots().stream().flatMap(List::stream))
                    .allSatisfy(spot -> assertThat(spot.distance(summit)).isBetween(radius - NEAR, radius + NEAR));
        }
    }

    @Test
    void shadeIsTheMapWithoutWhatIsLit() {
        String shade = map(FieldMapTest::cone).shade().orElseThrow();
        assertThat(places().filter(place -> cone(place) < 0.1)).allMatch(place -> holds(shade, place));
        assertThat(places().filter(place -> cone(place) > 0.5)).noneMatch(place -> holds(shade, place));
    }

    @Test
    void overTheCeilingIsAroundTheSummit() {
        String over = map(FieldMapTest::cone).over().orElseThrow();
        assertThat(places().filter(place -> cone(place) > 5.2)).isNotEmpty().allMatch(place -> holds(over, place));
        assertThat(places().filter(place -> cone(place) < 4.8)).noneMatch(place -> holds(over, place));
    }

    @Test
    void anEvenlyLitPlaneHasNeitherLinesNorShade() {
        FieldMap map = map(place -> 1);
        assertThat(map.lines()).isEmpty();
        assertThat(map.shade()).isEmpty();
        assertThat(map.over()).isEmpty();
    }

    @Test
    void aDarkPlaneIsAllShade() {
        FieldMap map = map(place -> 0);
        assertThat(map.bands()).hasSize(1);
        assertThat(places()).allMatch(place -> holds(map.shade().orElseThrow(), place));
    }

    @Test
    void ofAnUnknownPlaneNothingIsDrawn() {
        FieldMap map = map(place -> Double.NaN);
        assertThat(map.bands()).isEmpty();
        assertThat(map.shade()).isEmpty();
    }

    @Test
    void whatIsUnknownInASolidIsFilledFromAround() {
        FieldMap map = map(place -> Math.abs(place.acrossMetres() - 0.4) < 0.1 ? Double.NaN : 4 * place.acrossMetres());
        assertThat(line(map, Limit.LOW).spots()).isNotEmpty();
        assertThat(places()).allMatch(place -> holds(map.bands().get(0).path(), place));
    }

    @Test
    void tonesBeginAtTheLimits() {
        double[] levels = FieldMap.levels(TARGET);
        assertThat(levels).hasSize(16);
        assertThat(List.of(levels[5], levels[10], levels[12], levels[14])).containsExactly(0.3, 2.0, 3.5, 5.0);
        assertThat(levels).isSorted();
    }

    static Stream<ZoneTarget> tightTargets() {
        return Stream.of(
                new ZoneTarget(new Interval(2, 2), 2, 2),
                new ZoneTarget(new Interval(2, 3), 0, 3),
                new ZoneTarget(new Interval(0, 3), 0, 8));
    }

    @ParameterizedTest
    @MethodSource("tightTargets")
    void tonesRiseWhateverTheTarget(ZoneTarget target) {
        double[] levels = Arrays.stream(FieldMap.levels(target))
                .skip(1)
                .filter(level -> !Double.isNaN(level))
                .toArray();
        assertThat(levels).isNotEmpty().isSorted().doesNotHaveDuplicates();
        assertThat(levels[0]).isPositive();
    }
}
