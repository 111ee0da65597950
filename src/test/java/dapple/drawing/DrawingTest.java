package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.drawing.Drawing.Words;
import dapple.drawing.EnclosureFigure.Lamp;
import dapple.drawing.EnclosureFigure.Point;
import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.judging.State;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DrawingTest {
    private static final Words WORDS = new Words("Section", "Nothing is known of the light.");
    private static final double PHONE_PIXELS = 358;
    private static final double LEAST_PIXELS = 12;

    private static Drawing drawing(CutPlane plane, List<Point> points) {
        return Drawing.of(Figures.dryRoom(points), plane, Optional.empty(), WORDS);
    }

    private static Drawing section(List<Point> points) {
        return drawing(new Section(0.3), points);
    }

    /** Points in a heap, along a line, over each other, in a corner, and by chance. */
    static Stream<Arguments> crowds() {
        Random chance = new Random(11);
        return Stream.of(
                        points(8, index -> new Vec(0.5 + 0.01 * index, 0.3, 0.4)),
                        points(12, index -> new Vec(0.12 * index + 0.05, 0.3, 0.02)),
                        points(5, index -> new Vec(0.75, 0.3, 0.35)),
                        points(6, index -> new Vec(1.5, 0.6, 0.7 - 0.01 * index)),
                        points(15, index -> new Vec(1.5 * chance.nextDouble(), 0.3, 0.7 * chance.nextDouble())),
                        points(60, index -> new Vec(0.02 * index, 0.3, 0.35)))
                .flatMap(points -> Stream.of(new Section(0.3), new Plan(0.2))
                        .map(plane -> Arguments.of(points.size(), plane, points)));
    }

    private static List<Point> points(int count, IntFunction<Vec> places) {
        return IntStream.range(0, count)
                .mapToObj(index -> Figures.point("Point " + index, places.apply(index), "1.7", State.TOO_WEAK))
                .toList();
    }

    private static List<Area> labels(Layer layer) {
        return Stream.of(layer.plates(), layer.limits(), layer.lamps(), layer.ticks())
                .flatMap(List::stream)
                .map(Label::area)
                .toList();
    }

    private static void assertApart(Layer layer) {
        List<Area> areas = labels(layer);
        for (int one = 0; one < areas.size(); one++) {
            for (int other = 0; other < one; other++) {
                assertThat(areas.get(one).overlaps(areas.get(other)))
                        .as("%s and %s", areas.get(one), areas.get(other))
                        .isFalse();
            }
        }
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("crowds")
    void noWordsLieOnOthers(int count, CutPlane plane, List<Point> points) {
        drawing(plane, points).layers().forEach(DrawingTest::assertApart);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("crowds")
    void noWordsLeaveTheDrawing(int count, CutPlane plane, List<Point> points) {
        Drawing drawing = drawing(plane, points);
        Area paper = new Area(0, 0, 640, drawing.height());
        assertThat(drawing.layers().stream().flatMap(layer -> labels(layer).stream()))
                .allSatisfy(area -> {
                    assertThat(area.left()).isGreaterThanOrEqualTo(paper.left());
                    assertThat(area.right()).isLessThanOrEqualTo(paper.right());
                    assertThat(area.top()).isGreaterThanOrEqualTo(paper.top());
                    assertThat(area.bottom()).isLessThanOrEqualTo(paper.bottom());
                });
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("crowds")
    void everyPointKeepsItsPlate(int count, CutPlane plane, List<Point> points) {
        assertThat(drawing(plane, points).layers())
                .allSatisfy(layer -> assertThat(layer.plates()).hasSize(count));
    }

    @Test
    void wordsOfALitSectionLieApartToo() {
        Drawing.of(
                        Figures.dryRoom(Figures.points()),
                        new Section(0.3),
                        Optional.of(Figures.light(new Section(0.3))),
                        WORDS)
                .layers()
                .forEach(layer -> {
                    assertApart(layer);
                    assertThat(layer.limits()).extracting(Label::words).contains("2.0", "5.0 ceiling");
                });
    }

    @Test
    void noPlateCoversAnotherPoint() {
        List<Point> points = points(8, index -> new Vec(0.5 + 0.03 * index, 0.3, 0.4));
        for (Layer layer : section(points).layers()) {
            for (Layer.Dot dot : layer.points()) {
                assertThat(layer.plates()).noneMatch(plate -> plate.area().overlaps(dot.area()));
            }
        }
    }

    @Test
    void wordsOnAPhoneAreAtLeast12PixelsHigh() {
        assertThat(section(List.of()).narrow().type() * PHONE_PIXELS / 640).isGreaterThanOrEqualTo(LEAST_PIXELS);
    }

    /** 1.5 m are 600 units. */
    @Test
    void aPointStandsAtItsExactPlace() {
        Layer.Dot left = section(List.of(Figures.point("A", new Vec(0, 0.3, 0), "1", State.ON_TARGET)))
                .wide()
                .points()
                .get(0);
        Layer.Dot other = section(List.of(Figures.point("A", new Vec(0.75, 0.3, 0.5), "1", State.ON_TARGET)))
                .wide()
                .points()
                .get(0);
        assertThat(other.x() - left.x()).isCloseTo(300, within(1e-9));
        assertThat(left.y() - other.y()).isCloseTo(200, within(1e-9));
    }

    @Test
    void aSectionCutsWhatStandsInItsPlane() {
        Drawing section = section(List.of());
        assertThat(section.cut()).hasSize(6);
        assertThat(section.beside()).hasSize(1);
    }

    /** The slab that is rested on lies 0.14 to 0.46 m from the front; a lid over the back half begins at 0.3 m. */
    @Test
    void aSectionShowsTheRestingPlacesAndLidsThatItCuts() {
        assertThat(section(List.of()).restingPlaces()).hasSize(1);
        assertThat(drawing(new Section(0.1), List.of()).restingPlaces()).isEmpty();
        EnclosureFigure half = new EnclosureFigure(
                new Vec(1.5, 0.6, 0.7),
                List.of(new EnclosureFigure.Lid(0.7, Filter.Rectangle.between(0, 0.3, 1.5, 0.6))),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        assertThat(Drawing.of(half, new Section(0.2), Optional.empty(), WORDS).lids())
                .isEmpty();
        assertThat(Drawing.of(half, new Section(0.4), Optional.empty(), WORDS).lids())
                .containsExactly("M20 12l600 0");
    }

    @Test
    void aTallEnclosureIsDrawnToOneScaleAsWell() {
        EnclosureFigure tall =
                new EnclosureFigure(new Vec(0.6, 0.6, 2), List.of(), List.of(), List.of(), List.of(), List.of());
        Drawing drawing = Drawing.of(tall, new Section(0.3), Optional.empty(), WORDS);
        assertThat(drawing.walls()).isEqualTo("M248 12l0 480 144 0 0-480");
        assertThat(drawing.height()).isLessThan(560);
    }

    static Stream<Source> sources() {
        Vec across = new Vec(0, 1, 0);
        return Stream.of(
                new Source.Line(0.6, new Vec(1, 0, 0), Optional.empty()),
                new Source.Cylinder(0.6, across, 0.013),
                new Source.Rectangle(0.3, new Vec(1, 0, 0), 0.1),
                new Source.Rectangle(0.3, across, 0.1),
                new Source.Disc(0.05));
    }

    @ParameterizedTest
    @MethodSource("sources")
    void everyKindOfLampIsSeenFromTheFrontAndFromAbove(Source source) {
        Lamp lamp = new Lamp("L", new Vec(0.75, 0.3, 0.8), new Vec(0, 0, -1), source);
        EnclosureFigure figure =
                new EnclosureFigure(new Vec(1.5, 0.6, 0.7), List.of(), List.of(lamp), List.of(), List.of(), List.of());
        List<String> paths = new ArrayList<>();
        for (CutPlane plane : List.of(new Section(0.3), new Plan(0.3))) {
            Drawing.of(figure, plane, Optional.empty(), WORDS).lamps().forEach(shape -> paths.add(shape.path()));
        }
        assertThat(paths).hasSize(2).allMatch(path -> path.matches("(M-?[\\d.]+ -?[\\d.]+l[-\\d. ]+z)+"));
    }

    @Test
    void longNamesAreCut() {
        Layer layer = section(List.of(Figures.point(
                        "The slab below the second lamp", new Vec(0.5, 0.3, 0.4), "1.7", State.ON_TARGET)))
                .narrow();
        assertThat(layer.plates().get(0).words()).isEqualTo("The slab below… 1.7");
    }
}
