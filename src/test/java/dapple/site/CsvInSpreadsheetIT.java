package dapple.site;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.testing.LibreOffice;
import dapple.testing.NeedsLibreOffice;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.support.StaticMessageSource;

/** How a file opens in a spreadsheet program: by its saved cells, in the flat form of OpenDocument (ISO/IEC 26300). */
@NeedsLibreOffice
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CsvInSpreadsheetIT {
    private String saved = "";

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        StaticMessageSource words = new StaticMessageSource();
        words.addMessage("column.a", Locale.UK, "Größe");
        Path file = folder.resolve("list.csv");
        CsvColumns<Object> columns = CsvColumns.none().with("a", cell -> cell);
        List<Object> cells = List.of(
                "=1+1",
                -12.5,
                "Äußere, \"ö\"",
                "two\nlines",
                List.of("east", "west"),
                LocalDate.of(2026, 2, 28),
                Instant.parse("2026-12-01T10:00:00Z"));
        try (OutputStream to = Files.newOutputStream(file)) {
            new CsvWriting(words).write(columns, cells::forEach, ZoneOffset.UTC, to);
        }
        saved = Files.readString(LibreOffice.convertCsv(file, "fods"));
    }

    @Test
    void noCellIsAFormula() {
        assertThat(saved).doesNotContain("table:formula").contains("&apos;=1+1");
    }

    @Test
    void aNegativeNumberIsANumber() {
        assertThat(saved).contains("office:value=\"-12.5\"");
    }

    @Test
    void lettersAndQuotesAreWhatTheyWere() {
        assertThat(saved).contains("<text:p>Größe</text:p>", "<text:p>Äußere, &quot;ö&quot;</text:p>");
    }

    @Test
    void aCellOfTwoLinesIsOneCell() {
        assertThat(saved).containsPattern("<text:p>two</text:p>\\s*<text:p>lines</text:p>");
    }

    @Test
    void severalInACellAreOneCell() {
        assertThat(saved).contains("<text:p>east; west</text:p>");
    }

    @Test
    void aDayIsADay() {
        assertThat(saved).contains("office:date-value=\"2026-02-28\"");
    }

    /** A day and time of its own would lose the offset, by which the hour that comes twice is told apart. */
    @Test
    void aTimeIsATextWithItsOffset() {
        assertThat(saved)
                .containsPattern("value-type=\"string\"[^>]*>\\s*<text:p>2026-12-01T10:00:00\\+00:00</text:p>");
    }
}
