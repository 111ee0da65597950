package dapple;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written for people holds: links lead somewhere, and links and buttons are called as on the pages. */
class GuideTest {
    private static final Path MESSAGES = Path.of("src/main/resources/messages.properties");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]+)(#[^)]*)?\\)");
    private static final Pattern ON_A_PAGE = Pattern.compile("(?<![*\\w])[*]([^*]+)[*](?![*\\w])");
    private static final Pattern FILLED_IN = Pattern.compile("[{][0-9][^{}]*[}]");

    /** A message that is filled in and says little else would fit any name. */
    private static final int FEWEST_LETTERS = 3;

    @ParameterizedTest
    @MethodSource("documents")
    void everyLinkLeadsToAFile(Path document) throws IOException {
        assertThat(all(LINK, Files.readString(document)))
                .filteredOn(link -> !link.contains(":"))
                .allSatisfy(link ->
                        assertThat(document.resolveSibling(link).normalize()).exists());
    }

    @ParameterizedTest
    @MethodSource("guides")
    void everyNameOfALinkOrButtonIsThatOfAPage(Path guide) throws IOException {
        List<Pattern> messages = messages();

        assertThat(all(ON_A_PAGE, Files.readString(guide)))
                .isNotEmpty()
                .allMatch(name -> messages.stream()
                        .anyMatch(message -> message.matcher(name).matches()));
    }

    @Test
    void eachGuideStandsInTheIndex() throws IOException {
        String index = Files.readString(Path.of("docs/guide/README.md"));

        assertThat(guides()).allSatisfy(guide -> assertThat(index).contains("](" + guide.getFileName() + ")"));
    }

    static List<Path> documents() throws IOException {
        return Stream.of(Path.of("."), Path.of("docs"), Path.of("docs/guide"), Path.of("shared"))
                .flatMap(GuideTest::markdownIn)
                .toList();
    }

    static List<Path> guides() throws IOException {
        return markdownIn(Path.of("docs/guide"))
                .filter(guide -> !guide.endsWith("README.md"))
                .toList();
    }

    private static Stream<Path> markdownIn(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".md")).sorted().toList().stream();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static List<String> all(Pattern wanted, String text) {
        return wanted.matcher(text)
                .results()
                .map((MatchResult found) -> found.group(1).replaceAll("\\s+", " "))
                .toList();
    }

    /** Each message as it looks once something is filled in; a full stop at its end may be left out. */
    private static List<Pattern> messages() throws IOException {
        Properties messages = new Properties();
        try (Reader reader = Files.newBufferedReader(MESSAGES)) {
            messages.load(reader);
        }
        return messages.values().stream()
                .filter(message -> letters(message.toString()) >= FEWEST_LETTERS)
                .map(message -> Stream.of(FILLED_IN.split(message.toString().replaceAll("[.]$", ""), -1))
                        .map(Pattern::quote)
                        .reduce((before, after) -> before + ".+" + after)
                        .orElseThrow())
                .map(Pattern::compile)
                .toList();
    }

    private static int letters(String message) {
        return FILLED_IN
                .matcher(message)
                .replaceAll("")
                .replaceAll("\\P{L}", "")
                .length();
    }
}
