package dapple.importing;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.importing.sheet.Columns;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Meaning;
import dapple.importing.sheet.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Keeps the tables of {@code docs/import.md} the same as the program; {@code -Dwrite.docs=true} writes them anew. */
class ImportDocTest {
    private static final Path DOC = Path.of("docs", "import.md");
    private static final Path MESSAGES = Path.of("src/main/resources/messages.properties");
    private static final String BEGIN = "<!-- written by ImportDocTest -->\n";
    private static final String END = "<!-- end -->\n";

    @Test
    void saysWhatColumnsMean() throws IOException {
        String doc = Files.readString(DOC);
        String expected =
                doc.substring(0, doc.indexOf(BEGIN) + BEGIN.length()) + tables() + doc.substring(doc.indexOf(END));
        if (Boolean.getBoolean("write.docs")) {
            Files.writeString(DOC, expected);
        }
        assertThat(doc).isEqualTo(expected);
    }

    /** An empty sheet of the program's own is read by the program. */
    @Test
    void everyFieldIsKnownByItsOwnName() throws IOException {
        Properties messages = messages();
        assertThat(Field.values())
                .allSatisfy(field -> assertThat(Columns.OF_NOBODY.find(messages.getProperty("import.field." + field)))
                        .contains(new Meaning.Of(field)));
    }

    private static Properties messages() throws IOException {
        Properties messages = new Properties();
        messages.load(Files.newBufferedReader(MESSAGES));
        return messages;
    }

    private static String tables() throws IOException {
        Properties messages = messages();
        String fields = Arrays.stream(Field.values())
                .map(field -> "| " + messages.getProperty("import.subject." + field.subject()) + " | "
                        + messages.getProperty("import.field." + field) + " | " + names("column", field.name())
                        + " |\n")
                .collect(Collectors.joining());
        return "| of | column | names that are known |\n| --- | --- | --- |\n" + fields + "\n"
                + "| part of a column's name | names that are known |\n| --- | --- |\n" + parts("role")
                + parts("quantity");
    }

    private static String parts(String kind) {
        return Words.of(kind).values().stream()
                .distinct()
                .sorted()
                .map(part ->
                        "| " + part.toLowerCase(Locale.ROOT).replace('_', ' ') + " | " + names(kind, part) + " |\n")
                .collect(Collectors.joining());
    }

    private static String names(String kind, String meaning) {
        return Words.of(kind).entrySet().stream()
                .filter(entry -> entry.getValue().equals(meaning))
                .map(Map.Entry::getKey)
                .sorted()
                .collect(Collectors.joining(", "));
    }
}
