package dapple;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever code or docs cite is explained in {@code docs/sources.md}, and whatever is shared says where it is from. */
class SourcesTest {
    private static final String KEY = "[a-z]+[0-9]{3,}[a-z]?";

    /** In brackets, alone, before a page or beside other keys. */
    private static final Pattern CITED = Pattern.compile("(?<=\\[|[;,] )" + KEY + "(?=[^\\[\\]]*\\])");

    /** First in a row. */
    private static final Pattern EXPLAINED = Pattern.compile("(?m)(?<=^\\| )" + KEY + "(?= \\|)");

    private static final Path SHARED = Path.of("shared");

    @ParameterizedTest
    @ValueSource(strings = {"src/main/java/dapple", "docs", "shared"})
    void everyCitedKeyIsExplained(String folder) throws IOException {
        List<String> cited = files(Path.of(folder)).stream()
                .filter(file -> file.toString().matches(".*\\.(java|md)"))
                .flatMap(file -> found(CITED, file))
                .toList();

        assertThat(cited).isNotEmpty();
        assertThat(found(EXPLAINED, Path.of("docs/sources.md"))).containsAll(cited);
    }

    @Test
    void everySharedFileSaysWhereItIsFrom() throws IOException {
        Path sources = SHARED.resolve("SOURCES.md");
        List<String> rows = files(SHARED).stream()
                .filter(file -> !file.equals(sources))
                .map(file -> "| `" + SHARED.relativize(file).toString().replace('\\', '/') + "` |")
                .toList();

        assertThat(rows).isNotEmpty();
        assertThat(Files.readString(sources)).contains(rows);
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile).toList();
        }
    }

    private static Stream<String> found(Pattern pattern, Path file) {
        try {
            return pattern.matcher(Files.readString(file)).results().map(MatchResult::group);
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read " + file, cause);
        }
    }
}
