package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.archive.Stock.Kept;
import dapple.people.Role;
import dapple.testing.Asking;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** What of a year's record people read without the program: one reading of 4.3 in place of 3.4, at a new enclosure. */
@PagesTest
class YearSheetsPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Stock stock;

    @Autowired
    private MockMvc pages;

    @TempDir
    private Path folder;

    private Kept kept;
    private ArchiveFile record;

    @BeforeEach
    void takeOut() throws Exception {
        kept = stock.make();
        Asking inspector = new Asking(pages, collection.as(collection.person(kept.site(), Role.INSPECTOR)));
        byte[] sent = inspector
                .see("/records/year?from=last-12-months")
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        record = ArchiveFile.open(Files.write(folder.resolve("year.zip"), sent));
    }

    @AfterEach
    void close() throws Exception {
        record.close();
    }

    @Test
    void allSheetsAreThereAndSummed() throws Exception {
        record.check();
        assertThat(record.manifest().sha256().keySet())
                .contains(
                        "sheets/readings.csv",
                        "sheets/weeks.csv",
                        "sheets/enclosures.csv",
                        "sheets/lamp-and-cover-changes.csv",
                        "sheets/corrections.csv",
                        "sheets/rounds.csv",
                        "sheets/summary.pdf");
    }

    @Test
    void theReadingThatCountsStandsBesideTheOneItReplaced() throws Exception {
        CsvTable readings = sheet("readings.csv");

        assertThat(readings.column("Amount, as the meter showed it")).contains("3.4", "4.3");
        assertThat(readings.column("Counts")).contains("no", "yes");
    }

    @Test
    void thisWeekIsReadAndTheLastIsNotDue() throws Exception {
        String thisWeek = week(LocalDate.now(kept.site().timeZone()));
        String lastWeek = week(LocalDate.now(kept.site().timeZone()).minusWeeks(1));
        List<Map<String, String>> weeks = sheet("weeks.csv").rows();

        assertThat(row(weeks, "Week", thisWeek))
                .containsEntry("Readings due", "due")
                .containsEntry("Read", "yes");
        assertThat(row(weeks, "Week", lastWeek))
                .containsEntry("Readings due", "not due: nobody lived there")
                .containsEntry("The week as a whole", "");
    }

    @Test
    void theEnclosureIsSummedUp() throws Exception {
        assertThat(sheet("enclosures.csv").rows())
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("Weeks read, of those due", "1")
                        .containsEntry("Weeks read, of those due (%)", "100"));
    }

    @Test
    void theCorrectionSaysWhatStandsInsteadAndWhy() throws Exception {
        assertThat(sheet("corrections.csv").rows())
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("What was done", "reading corrected")
                        .containsEntry("Was", "3.4 UVI")
                        .containsEntry("Stands instead", "4.3 UVI")
                        .containsEntry("Reason", "a, \"typed\" wrong, and 0,1 µm — é"));
    }

    @Test
    void theSummaryNamesSiteMakerCautionAndSums() throws Exception {
        String text = summary();

        assertThat(text)
                .contains(kept.site().name())
                .contains("Measured with hand-held meters; not a certificate.")
                .contains("1 of 1")
                .contains(record.manifest().sha256().getOrDefault("sheets/readings.csv", "none"));
    }

    private String summary() throws Exception {
        try (PDDocument document = Loader.loadPDF(record.bytes("sheets/summary.pdf"))) {
            assertThat(document.getNumberOfPages()).isBetween(1, 3);
            return new PDFTextStripper().getText(document);
        }
    }

    private CsvTable sheet(String name) throws Exception {
        return CsvTable.of(record.bytes("sheets/" + name));
    }

    private static Map<String, String> row(List<Map<String, String>> rows, String title, String cell) {
        return rows.stream()
                .filter(row -> cell.equals(row.get(title)))
                .findFirst()
                .orElseThrow();
    }

    private static String week(LocalDate day) {
        return "%d-W%02d".formatted(day.get(IsoFields.WEEK_BASED_YEAR), day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }
}
