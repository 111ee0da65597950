package dapple.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Keeps the table of {@code docs/checks.md} the same as the program; {@code -Dwrite.docs=true} writes it anew. */
class ChecksDocTest {
    private static final Path DOC = Path.of("docs", "checks.md");
    private static final Path CODE = Path.of("src/main/java/dapple/check");
    private static final String BEGIN = "<!-- written by ChecksDocTest -->\n";
    private static final String END = "<!-- end -->\n";
    private static final Pattern SAID =
            Pattern.compile("(?:holds|fails|unknown)\\(\\s*TradeCheck\\.(\\w+),\\s*\"([\\w-]+)\"");

    private final Properties messages = messages();

    @Test
    void saysWhatTheProgramChecks() throws IOException {
        String doc = Files.readString(DOC);
        String before = doc.substring(0, doc.indexOf(BEGIN) + BEGIN.length());
        String after = doc.substring(doc.indexOf(END));
        String expected = before + table() + after;
        if (Boolean.getBoolean("write.docs")) {
            Files.writeString(DOC, expected);
        }
        assertThat(doc).isEqualTo(expected);
    }

    @ParameterizedTest
    @EnumSource
    void hasAllItsWords(TradeCheck check) {
        assertThat(Stream.of("name", "reason", "cited", "rule", "figure").map(part -> "check." + part + "." + check))
                .allMatch(messages::containsKey);
    }

    @Test
    void everySentenceThatTheRulesNameIsWritten() throws IOException {
        List<String> named = Stream.of(
                        "ZoneRules",
                        "SpotsRule",
                        "BaskingRules",
                        "CompactRule",
                        "LampRules",
                        "PaneRule",
                        "FireRule",
                        "SeasonRule",
                        "KeeperRule")
                .flatMap(ChecksDocTest::said)
                .toList();
        assertThat(named).hasSizeGreaterThan(50).allMatch(messages::containsKey);
    }

    private static Stream<String> said(String rules) {
        try {
            return SAID.matcher(Files.readString(CODE.resolve(rules + ".java")))
                    .results()
                    .filter(found -> !found.group(2).endsWith("-"))
                    .map(found -> "check.said." + found.group(1) + "." + found.group(2));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    private String table() {
        return "| check | it holds when | figure | mark | source |\n| --- | --- | --- | --- | --- |\n"
                + Stream.of(TradeCheck.values()).map(this::row).collect(Collectors.joining());
    }

    private String row(TradeCheck check) {
        return "| " + word("name", check) + " | " + word("rule", check) + " | " + word("figure", check) + " | "
                + messages.getProperty("mark." + check.mark()) + " | " + word("cited", check) + " |\n";
    }

    private String word(String part, TradeCheck check) {
        return messages.getProperty("check." + part + "." + check);
    }

    private static Properties messages() {
        Properties messages = new Properties();
        try (Reader reader = Files.newBufferedReader(Path.of("src/main/resources/messages.properties"))) {
            messages.load(reader);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
        return messages;
    }
}
