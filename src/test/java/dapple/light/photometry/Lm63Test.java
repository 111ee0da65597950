package dapple.light.photometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.photometry.Lm63.Outcome;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The files of these tests are invented, and typed from memory of the structure of LM-63. */
class Lm63Test {
    /** Straight lines each 5° below a cosine: 1 − (5°)²/12 at most. */
    private static final double EACH_FIVE_DEGREES_PERCENT = 0.07;

    private static final String HEAD_1986 = "a lamp\nof nobody\nTILT=NONE\n";
    private static final String SMALL = "1 100 1 3 1 1 2 0 0 0\n1 1 10\n0 45 90\n0\n100 50 0\n";

    /** 700 lm of a diffuse face: 700/π cd along the aim, by Lambert's law. */
    @Test
    void hasTheLumensOfTheFile() throws IOException {
        PhotometricFile file = read(resource("diffuse-disc.ies"));
        assertThat(file.intensities().lumens()).isCloseTo(700, withPercentage(EACH_FIVE_DEGREES_PERCENT));
        assertThat(file.efficiency().orElseThrow()).isCloseTo(0.7, within(0.001));
    }

    @Test
    void hasWhatStandsBeforeTheNumbers() throws IOException {
        PhotometricFile file = read(resource("diffuse-disc.ies"));
        assertThat(file.edition()).isEqualTo(2002);
        assertThat(file.keywords()).containsEntry("ISSUEDATE", "26-NOV-2026");
        assertThat(file.keywords().get("LUMINAIRE"))
                .endsWith("cos of the angle; 1000 lm bare, 70 % leave it: 700 lm/pi along the aim");
        assertThat(file.inputWatts()).isEqualTo(12);
        assertThat(file.opening()).isEqualTo(new PhotometricFile.Opening(0.2, 0.2, 0));
    }

    /** Two lamps, absolute; multiplier 4 and ballast factor 0.5 double the table: 500 lm; feet become metres. */
    @Test
    void takesAllFactorsIn() throws IOException {
        PhotometricFile file = read(resource("four-quarters.ies"));
        assertThat(file.intensities().lumens()).isCloseTo(500, withPercentage(EACH_FIVE_DEGREES_PERCENT));
        assertThat(file.lumensPerLamp()).isEmpty();
        assertThat(file.opening().lengthMetres()).isCloseTo(0.5 * 0.3048, within(1e-12));
    }

    /** A diffuse face far away: E = I/d² at 2 m along the aim, and half of the cosines' square at 45°. */
    @ParameterizedTest
    @CsvSource({"0, 55.70", "2, 13.926"})
    void lightsASceneAsASpot(double asideMetres, double lux) throws IOException {
        Intensities intensities = read(resource("diffuse-disc.ies")).intensities();
        Output output = new Output.Emission(Quantity.ILLUMINANCE, intensities.candelaAlongAim(), 1);
        Lamp lamp = new Lamp(
                "a",
                new Vec(0, 0, 2),
                new Vec(0, 0, -1),
                new Source.Spot(intensities.beam().orElseThrow()),
                List.of(output));
        Field field = Field.of(new Scene(0.001, List.of(lamp), List.of(), List.of()));
        Receiver receiver = new Receiver(new Vec(asideMetres, 0, 0), new Facing.Direction(Vec.UP));
        assertThat(field.at(receiver).values().get(Quantity.ILLUMINANCE)).isCloseTo(lux, withPercentage(0.05));
    }

    @Test
    void readsTheEditionWithoutAFirstLine() {
        assertThat(read(HEAD_1986 + SMALL).edition()).isEqualTo(1986);
    }

    @ParameterizedTest
    @CsvSource({"IESNA:LM-63-1995, 1995", "iesna91, 1991", "IESNA:LM-63-1991, 1991"})
    void readsTheEditionInTheFirstLine(String first, int edition) {
        assertThat(read(first + "\n[TEST] x\n[MORE] y\nTILT=NONE\n" + SMALL).edition())
                .isEqualTo(edition);
    }

    @Test
    void readsNumbersHoweverTheyAreSpreadOverLines() {
        String spread = SMALL.replace(" ", "\n").replace("\n0\n45", ", 0 ,45");
        assertThat(read(HEAD_1986 + spread).intensities().candela(22.5, 0)).isEqualTo(75);
    }

    @Test
    void takesTheSecondFactorOfOldEditions() {
        assertThat(read(HEAD_1986 + SMALL.replace("1 1 10", "1 0.5 10"))
                        .intensities()
                        .candelaAlongAim())
                .isEqualTo(50);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 100 1 3 1 1 2 0 0 0 | 1 100 1 3 1 2 2 0 0 0 | 4 | Type C alone is read",
                "1 100 1 3 1 1 2 0 0 0 | 1 100 1 3 1 1 3 0 0 0 | 4 | The unit of lengths must be 1 to 2 here.",
                "1 100 1 3 1 1 2 0 0 0 | 1 0 1 3 1 1 2 0 0 0 | 4 | above 0, or −1",
                "1 100 1 3 1 1 2 0 0 0 | 1 100 1 1 1 1 2 0 0 0 | 4 | The number of vertical angles must be 2 to 721 here.",
                "1 100 1 3 1 1 2 0 0 0 | 1 100 1 3 9999 1 2 0 0 0 | 4 | must be 1 to 721 here.",
                "1 100 1 3 1 1 2 0 0 0 | 1 100 NaN 3 1 1 2 0 0 0 | 4 | A number must stand here: the multiplier of the candela values.",
                "1 100 1 3 1 1 2 0 0 0 | 1 100 1e400 3 1 1 2 0 0 0 | 4 | The multiplier of the candela values must be",
                "1 100 1 3 1 1 2 0 0 0 | 1.5 100 1 3 1 1 2 0 0 0 | 4 | The number of lamps must be a whole number.",
                "1 1 10 | 0 1 10 | 5 | The ballast factor must be",
                "1 1 10 | 1 1 -1 | 5 | The input watts must be 0 to",
                "0 45 90 | 0 90 45 | 6 | Vertical angles must ascend.",
                "0 45 90 | 0 45 80 | 6 | The vertical angles must go from 0 or 90 to 90 or 180.",
                "100 50 0 | 100 -50 0 | 8 | Intensity must be 0 to",
                "100 50 0 | 100 fifty 0 | 8 | A number must stand here: an intensity.",
                "100 50 0 | 100 50 | 8 | The file ends before an intensity.",
                "100 50 0 | 100 50 0 7 | 8 | More stands here than the file says",
                "TILT=NONE | TILT=INCLUDE | 3 | TILT=NONE must stand here.",
                "TILT=NONE | none | 0 | There is no line TILT=NONE",
                "a lamp | IES:LM-63-2019 | 1 | This edition is not read.",
                "a lamp | IESNA:LM-63-2002 | 2 | each line must begin with a keyword",
                "a lamp | a\u0007b | 1 | This is not text."
            })
    void refusesWithTheLine(String standing, String instead, int line, String reason) {
        Outcome outcome = Lm63.read((HEAD_1986 + SMALL).replaceFirst("(?m)^" + standing + "$", instead));
        assertThat(outcome).isInstanceOfSatisfying(Outcome.Refused.class, refused -> {
            assertThat(refused.line()).isEqualTo(line);
            assertThat(refused.reason()).contains(reason);
        });
    }

    @Test
    void refusesASecondFactorInAnEditionWithout() {
        String file = "IESNA:LM-63-1995\nTILT=NONE\n" + SMALL.replace("1 1 10", "1 0.9 10");
        assertThat(Lm63.read(file))
                .isEqualTo(new Outcome.Refused(4, "This number has no use in this edition and must be 1."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n ", "\u0000\u0001"})
    void refusesWhatIsNoFile(String content) {
        assertThat(Lm63.read(content)).isInstanceOf(Outcome.Refused.class);
    }

    @Test
    void refusesWhatIsTooLong() {
        assertThat(Lm63.read("x".repeat(2_000_001))).isInstanceOf(Outcome.Refused.class);
    }

    static PhotometricFile read(String content) {
        Outcome outcome = Lm63.read(content);
        if (outcome instanceof Outcome.Read read) {
            return read.file();
        }
        throw new AssertionError(outcome);
    }

    static String resource(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(Lm63Test.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
