package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.field.FieldAccuracy.Family;
import dapple.light.field.FieldAccuracy.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The first half of the seeded scenes, all of them with {@code -Dscenes.share=1}; what was found is written to
 * {@code target/field-accuracy}.
 */
class FieldAccuracySimulationIT {
    private static final int SHARE = Integer.getInteger("scenes.share", 2);
    private static final Path FOUND = Path.of("target", "field-accuracy");

    @ParameterizedTest
    @EnumSource(Family.class)
    void agreesWithBruteForce(Family family) throws IOException {
        List<Outcome> outcomes = FieldAccuracy.compared(family, family.scenes / SHARE);
        write(family + "-compared.txt", FieldAccuracy.told(outcomes));
        assertThat(outcomes).allMatch(Outcome::isWithinBar);
    }

    @ParameterizedTest
    @EnumSource(Family.class)
    void isSeldomFurtherOffThanItSays(Family family) throws IOException {
        List<List<Outcome>> byAccuracy = FieldAccuracy.estimated(family, family.scenes / SHARE);
        write(
                family + "-estimated.txt",
                String.join("", byAccuracy.stream().map(FieldAccuracy::told).toList()));
        assertThat(byAccuracy)
                .allSatisfy(outcomes ->
                        assertThat(FieldAccuracy.honest(outcomes)).isGreaterThanOrEqualTo(FieldAccuracy.HONEST));
    }

    private static void write(String name, String text) throws IOException {
        Files.createDirectories(FOUND);
        Files.writeString(FOUND.resolve(name), text);
    }
}
