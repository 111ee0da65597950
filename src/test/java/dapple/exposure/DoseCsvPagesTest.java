package dapple.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.exposure.Fortnight.Kept;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** An animal's days as a file: what is a number is nothing but a number. */
@PagesTest
class DoseCsvPagesTest {
    private static final String BASKING = "UV index, basking place (UVI)";
    private static final String BASKING_IN_WORDS = "UV index, basking place, in words";
    private static final String SHADE = "UV index, shade (UVI)";

    @Autowired
    private Fortnight fortnight;

    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    @Test
    void theUvIndexIsANumberAndWhatIsSaidOfItStandsBesideIt() throws Exception {
        assertThat(day("2026-03-16")).containsEntry(BASKING, "4").containsEntry(SHADE, "0.5");
        assertThat(day("2026-03-17"))
                .containsEntry(BASKING, "4")
                .containsEntry(BASKING_IN_WORDS, "4.0 between readings of 16 Mar and 23 Mar");
    }

    @Test
    void aDayOnWhichItIsNotKnownHasNoNumber() throws Exception {
        assertThat(day("2026-03-26"))
                .containsEntry(BASKING, "")
                .containsEntry(SHADE, "")
                .containsEntry(BASKING_IN_WORDS, "unknown");
    }

    private Map<String, String> day(String day) throws Exception {
        return table(fortnight.lived()).stream()
                .filter(row -> row.containsValue(day))
                .findFirst()
                .orElseThrow();
    }

    private List<Map<String, String>> table(Kept kept) throws Exception {
        return CsvTable.of(pages.perform(
                                get(kept.page() + ".csv" + Fortnight.ASKED).with(collection.as(kept.person())))
                        .andExpect(status().isOk())
                        .andReturn()
                        .getResponse()
                        .getContentAsByteArray())
                .rows();
    }
}
