package dapple;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every word of the program's own that a user sees stands in {@code docs/words.md}, in the table of its kind. */
class WordsTest {
    private static final Path WORDS = Path.of("docs/words.md");
    private static final Pattern ARGUMENT = Pattern.compile("[{][0-9]");
    private static final Path MESSAGES = Path.of("src/main/resources/messages.properties");

    @ParameterizedTest
    @CsvSource({
        "nav., Navigation",
        "state., States",
        "role., Roles of people",
        "role-of-point., Roles of points",
        "outcome., Outcomes of a point that was not read",
        "method., Methods",
        "place., Places of limits",
        "mark., Source marks of limits",
        "check.outcome., Outcomes of checks",
        "check.name., Checks of the trade"
    })
    void everyWordOfAKindHasARow(String prefix, String heading) throws IOException {
        List<String> words = messages(key -> key.startsWith(prefix));

        assertThat(words).isNotEmpty();
        assertThat(firstCells(heading)).containsAll(words);
    }

    @Test
    void everyTitleHasARow() throws IOException {
        assertThat(firstCells("Pages")).containsAll(messages(key -> key.endsWith(".title")));
    }

    /** The formatter of messages reads them only where there is something to fill in; elsewhere two would be shown as two. */
    @Test
    void anApostropheIsDoubledWhereThereAreArgumentsAlone() throws IOException {
        assertThat(messages(key -> true)).allSatisfy(message -> {
            boolean isFilledIn = ARGUMENT.matcher(message).find();
            assertThat(isFilledIn ? message.replace("''", "") : message).doesNotContain(isFilledIn ? "'" : "''");
        });
    }

    /** Of two, the one that stands last would be shown in both places. */
    @Test
    void everyKeyStandsOnce() throws IOException {
        assertThat(Files.readAllLines(MESSAGES).stream()
                        .filter(line -> !line.isBlank() && !line.startsWith("#"))
                        .map(line -> line.substring(0, line.indexOf('='))))
                .doesNotHaveDuplicates();
    }

    private static List<String> messages(Predicate<String> isWanted) throws IOException {
        Properties messages = new Properties();
        try (Reader reader = Files.newBufferedReader(MESSAGES)) {
            messages.load(reader);
        }
        return messages.entrySet().stream()
                .filter(message -> isWanted.test(message.getKey().toString()))
                .map(message -> message.getValue().toString())
                .toList();
    }

    /** What stands first in each row of the tables under a heading. */
    private static List<String> firstCells(String heading) throws IOException {
        return Files.readAllLines(WORDS).stream()
                .dropWhile(line -> !line.equals("## " + heading))
                .skip(1)
                .takeWhile(line -> !line.startsWith("## "))
                .filter(line -> line.startsWith("| "))
                .map(line -> line.substring(2, line.indexOf(" |", 2)))
                .toList();
    }
}
