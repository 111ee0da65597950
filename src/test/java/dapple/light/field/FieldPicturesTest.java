package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Keeps the pictures of fields the same as the program; {@code -Dwrite.docs=true} draws them anew. */
class FieldPicturesTest {
    private static final Path PICTURES = Path.of("docs", "pictures");

    /** Coordinates are rounded to a tenth, so that the last digit may differ where a number has hardly changed. */
    private static final double ROUNDING = 0.1 + 1e-9;

    private static final int MOST_CHARACTERS = 60_000;
    private static final Pattern COORDINATE = Pattern.compile("-?\\d+\\.\\d");

    static Stream<Arguments> pictures() {
        return Stream.of(
                Arguments.of(
                        "field-tube.svg",
                        new FieldPicture(
                                "The field of a tube",
                                "The UV index under a bare tube 0.85 m long, 16 mm thick, that reads 4.2 at 0.3 m below"
                                        + " its middle. The levels run along the tube and close around its ends.",
                                lamp(new Source.Cylinder(0.85, new Vec(1, 0, 0), 0.008), 4.2),
                                0.425,
                                List.of(0.5, 1.0, 1.5, 2.0, 3.0, 4.0, 6.0, 10.0))),
                Arguments.of(
                        "field-spot.svg",
                        new FieldPicture(
                                "The field of a spot",
                                "The UV index under a spot with a face of 60 mm and a beam angle of 40 degrees that"
                                        + " reads 6 at 0.3 m below its middle. The levels are long drops below it.",
                                lamp(new Source.Face(Beam.Power.ofBeamAngle(40), 0.03), 6),
                                0.03,
                                List.of(0.1, 0.5, 1.0, 1.5, 2.0, 3.0, 6.0, 12.0, 30.0))));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void showWhatTheProgramComputes(String name, FieldPicture picture) throws IOException {
        Path file = PICTURES.resolve(name);
        String drawn = picture.drawn();
        if (Boolean.getBoolean("write.docs")) {
            Files.writeString(file, drawn);
        }
        String kept = Files.readString(file);
        assertThat(kept.length()).isLessThan(MOST_CHARACTERS);
        assertThat(COORDINATE.matcher(kept).replaceAll(""))
                .isEqualTo(COORDINATE.matcher(drawn).replaceAll(""));
        List<Double> expected = coordinates(drawn);
        List<Double> found = coordinates(kept);
        assertThat(found).hasSameSizeAs(expected);
        for (int index = 0; index < found.size(); index++) {
            assertThat(Math.abs(found.get(index) - expected.get(index))).isLessThanOrEqualTo(ROUNDING);
        }
    }

    private static List<Double> coordinates(String drawing) {
        return COORDINATE
                .matcher(drawing)
                .results()
                .map(MatchResult::group)
                .map(Double::valueOf)
                .toList();
    }

    private static Lamp lamp(Source source, double reading) {
        Vec below = new Vec(0, 0, -0.3);
        Output output = new Output.Reading(Quantity.UV_INDEX, reading, below, Vec.UP, 1);
        return new Lamp("lamp", new Vec(0, 0, 0), new Vec(0, 0, -1), source, List.of(output));
    }
}
