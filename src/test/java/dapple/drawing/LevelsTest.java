package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.drawing.Drawing.Words;
import dapple.drawing.FieldMap.Limit;
import dapple.drawing.Grips.Grip;
import dapple.drawing.Grips.Shape;
import dapple.drawing.Levels.At;
import dapple.light.geometry.Vec;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Round levels, and drawings whose parts can be taken hold of. */
class LevelsTest {
    private static final LitPlane.Grid GRID = LitPlane.Grid.over(new Place(0, 0), new Place(1.5, 0.7), 0.02);
    private static final Frame FRAME = Frame.around(List.of(new Place(0, 0), new Place(1.5, 0.7)), 0);
    private static final Words WORDS = new Words("Section", "What is there");

    /** From nothing at the left to so much at the right. */
    private static LitPlane slope(double most) {
        return LitPlane.of(GRID, place -> most * place.acrossMetres() / 1.5);
    }

    private static Levels.Round levels(double most) {
        return Levels.Round.on(slope(most), Optional.empty(), amount -> "is " + amount);
    }

    static Stream<Arguments> slopes() {
        return Stream.of(
                Arguments.of(10_500, List.of(100.0, 200.0, 500.0, 1_000.0, 2_000.0, 5_000.0, 10_000.0)),
                Arguments.of(6.0, List.of(0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0)),
                Arguments.of(0.45, List.of(0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2)));
    }

    @ParameterizedTest
    @MethodSource("slopes")
    void areOneTwoOrFiveTimesAPowerOfTen(double most, List<Double> expected) {
        assertThat(levels(most).rounds()).extracting(At::amount).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "1.99, 1", "2, 2", "4.9, 2", "5, 5", "9.99, 5", "0.02, 0.02", "0.3, 0.2", "70000, 50000"})
    void theLargestRoundAmountBelow(double amount, double expected) {
        assertThat(Ticks.roundBelow(amount)).isEqualTo(expected);
    }

    @Test
    void inTheDarkThereAreNone() {
        assertThat(levels(0).rounds()).isEmpty();
        FieldMap map = FieldMap.of(new LightFigure(slope(0), levels(0)), FRAME);
        assertThat(map.bands()).hasSize(1);
        assertThat(map.lines()).isEmpty();
    }

    @Test
    void everyLevelHasALineWithItsWordsWhereItIsReached() {
        FieldMap map = FieldMap.of(new LightFigure(slope(10_500), levels(10_500)), FRAME);
        assertThat(map.lines()).hasSize(7);
        for (FieldMap.Line line : map.lines()) {
            assertThat(line.words()).isEqualTo("is " + line.amount());
            assertThat(line.spots().get(0))
                    .allSatisfy(
                            spot -> assertThat(spot.x()).isCloseTo(FRAME.x(1.5 * line.amount() / 10_500), within(0.5)));
        }
    }

    /** By the tones on both sides: from the sixth on they are light. */
    @Test
    void linesAreLightOnDarkTonesAndDarkOnLightOnes() {
        FieldMap map = FieldMap.of(new LightFigure(slope(10_500), levels(10_500)), FRAME);
        assertThat(map.lines())
                .extracting(FieldMap.Line::limit)
                .containsExactly(
                        Limit.DIM, Limit.DIM, Limit.DIM, Limit.BRIGHT, Limit.BRIGHT, Limit.BRIGHT, Limit.BRIGHT);
    }

    @Test
    void tonesRiseWithTheLevels() {
        double[] levels = FieldMap.levels(levels(10_500));
        assertThat(Arrays.copyOfRange(levels, 1, 16)).isSorted().doesNotHaveDuplicates();
        assertThat(levels[14]).isEqualTo(10_000);
    }

    @Test
    void aCeilingStaysAboveRoundLevels() {
        Levels.Round capped = Levels.Round.on(slope(10_500), Optional.of(8_000.0), amount -> "is " + amount);
        FieldMap map = FieldMap.of(new LightFigure(slope(10_500), capped), FRAME);
        assertThat(map.over()).isPresent();
        assertThat(map.lines()).anyMatch(line -> line.limit() == Limit.CEILING && line.amount() == 8_000);
    }

    @Test
    void moreLevelsThanTonesAreRefused() {
        List<At> many = Collections.nCopies(8, new At(1, "1"));
        assertThatThrownBy(() -> new Levels.Round(many, Optional.empty())).isInstanceOf(IllegalArgumentException.class);
    }

    private static Drawing held(CutPlane plane) {
        Grips grips = new Grips(
                List.of(new Grip("lamps[0]", "Lamp"), new Grip("lamps[2]", "Third lamp")),
                List.of(new Grip("furniture[0]", "Slab")),
                List.of(new Grip("points[0]", "P1")));
        return Drawing.of(Figures.dryRoom(Figures.points()), plane, Optional.empty(), WORDS, grips);
    }

    @Test
    void whatIsHeldKeepsItsNameInTheForm() {
        Drawing drawing = held(new Section(0.3));
        assertThat(drawing.lamps().get(1).grip()).map(Grip::part).contains("lamps[2]");
        assertThat(Stream.concat(drawing.cut().stream(), drawing.beside().stream())
                        .flatMap(shape -> shape.grip().stream()))
                .containsExactly(new Grip("furniture[0]", "Slab"));
        assertThat(drawing.layers())
                .allSatisfy(layer ->
                        assertThat(layer.points().get(0).grip()).map(Grip::part).contains("points[0]"));
    }

    @Test
    void withoutGripsNothingIsHeldAndNothingLooksDifferent() {
        Drawing plain = Drawing.of(Figures.dryRoom(Figures.points()), new Section(0.3), Optional.empty(), WORDS);
        assertThat(plain.isHeld()).isFalse();
        assertThat(held(new Section(0.3)).isHeld()).isTrue();
        assertThat(held(new Section(0.3)).lamps())
                .extracting(Shape::path)
                .isEqualTo(plain.lamps().stream().map(Shape::path).toList());
    }

    /** A place found back from where it is drawn. */
    @Test
    void theScaleLeadsBackToMetres() {
        Vec place = Figures.points().get(0).place();
        for (CutPlane plane : List.of(new Section(0.3), new Plan(0.24))) {
            Drawing drawing = held(plane);
            Drawing.Scale scale = drawing.scale();
            Layer.Dot dot = drawing.wide().points().get(0);
            assertThat((dot.x() - scale.left()) / scale.unitsPerMetre()).isCloseTo(place.x(), within(1e-9));
            assertThat((scale.bottom() - dot.y()) / scale.unitsPerMetre())
                    .isCloseTo(plane instanceof Plan ? place.y() : place.z(), within(1e-9));
        }
        assertThat(held(new Section(0.3)).scale().offMetres()).isEqualTo(0.3);
        assertThat(held(new Plan(0.24)).scale().offMetres()).isEqualTo(0.24);
    }
}
