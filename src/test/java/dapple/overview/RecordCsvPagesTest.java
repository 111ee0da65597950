package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.overview.AuditStory.Told;
import dapple.people.Role;
import dapple.testing.Asking;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** What is on record of one thing as files: its history, the audit of its enclosure, what hangs and lives there. */
@PagesTest
class RecordCsvPagesTest {
    @Autowired
    private AuditStory story;

    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    private Told told;
    private Asking everybody;
    private String enclosure;
    private String animal;

    @BeforeEach
    void begin() {
        told = story.begin();
        everybody = new Asking(pages, collection.as(collection.person(told.site, Role.values())));
        enclosure = "/enclosures/" + told.home.enclosureId();
        animal = "/animals/" + told.home.animal().id();
    }

    @Test
    void everyListIsOfferedOnItsPageAndComes() throws Exception {
        for (String list : List.of(
                enclosure + "/audit",
                enclosure + "/history",
                enclosure + "/lamps",
                enclosure + "/points/" + told.home.basking().id() + "/history",
                enclosure + "/residents",
                enclosure + "/timers",
                animal + "/history",
                animal + "/orders",
                "/people/" + told.person.personId() + "/history",
                "/meters/" + told.meter.id() + "/history",
                "/meters/" + told.meter.id() + "/practice",
                "/meters/" + told.meter.id() + "/agreement",
                "/meters/agreement",
                "/meters/comparisons",
                "/review/" + told.home.enclosureId(),
                "/settings/history",
                "/targets/" + told.home.animal().speciesId(),
                "/targets/" + told.home.animal().speciesId() + "/history")) {
            everybody.see(list).andExpect(content().string(containsString("href=\"" + list + ".csv\"")));
            everybody
                    .see(list + ".csv")
                    .andExpect(status().isOk())
                    .andExpect(content().contentType("text/csv;charset=UTF-8"));
        }
    }

    @Test
    void aHistoryTellsWhoEnteredWhat() throws Exception {
        Map<String, String> code = row(enclosure + "/history.csv", "What it is of", "Code");

        assertThat(code).containsEntry("What was done", "entered").containsEntry("Before", "");
        assertThat(code.get("After")).isNotEmpty();
    }

    @Test
    void numbersInAHistoryAreNumbers() throws Exception {
        assertThat(row("/animals/" + told.home.animal().id() + "/history.csv", "What it is of", "Name"))
                .containsEntry("After", told.home.animal().name());
    }

    @Test
    void allOfAHistoryComesWhateverPageIsAskedFor() throws Exception {
        assertThat(table(enclosure + "/history.csv?page=7").rows())
                .isEqualTo(table(enclosure + "/history.csv").rows())
                .isNotEmpty();
    }

    @Test
    void theAuditTellsWhatHungWhoLivedThereAndWhatWasRead() throws Exception {
        told.hangALampLate();
        told.read();
        told.order();

        String audit = enclosure + "/audit.csv";
        assertThat(row(audit, "What", "lamp"))
                .containsEntry("Place", "basking tube")
                .containsEntry("On record then", "yes")
                .containsEntry("So by what is known now", "yes");
        assertThat(row(audit, "What", "animal or group"))
                .containsEntry("In words", "Pogona vitticeps")
                .containsEntry("How many", "1");
        assertThat(row(audit, "What", "reading"))
                .containsEntry("Which", "P1")
                .containsEntry("Amount, as the meter showed it", "4")
                .containsEntry("Meter", told.meter.code());
        assertThat(row(audit, "What", "vet’s order")).containsEntry("In words", "ultraviolet off: eyes shut");
    }

    /** 2.9 to 7.4 is the basking range of zone 3 [baines2016]. */
    @Test
    void theAuditTellsWhatWasAskedFor() throws Exception {
        assertThat(table(enclosure + "/audit.csv").column("In words"))
                .anyMatch(words -> words.startsWith("UV index: 2.9 to 7.4"));
    }

    @Test
    void theAuditIsOfTheInstantThatIsAskedFor() throws Exception {
        told.hangALampLate();
        LocalDateTime then = LocalDateTime.ofInstant(told.minutesAgo(120), told.site.timeZone())
                .truncatedTo(ChronoUnit.MINUTES);

        assertThat(row(enclosure + "/audit.csv?at=" + then, "What", "lamp")).containsEntry("On record then", "no");
        assertThat(table(enclosure + "/audit.csv?at=" + then.minusHours(2)).column("What"))
                .doesNotContain("lamp");
    }

    @Test
    void anInstantThatIsNoneIsAnsweredByThePage() throws Exception {
        everybody
                .see(enclosure + "/audit.csv?at=yesterday")
                .andExpect(status().isOk())
                .andExpect(forwardedUrl(enclosure + "/audit"));
    }

    @Test
    void anOrderTellsItsLimitItsReasonAndWhoGaveIt() throws Exception {
        told.order();

        assertThat(table(animal + "/orders.csv").rows().get(0))
                .containsEntry("Vet’s order", "ultraviolet off")
                .containsEntry("UV index ordered, ceiling everywhere (UVI)", "0.1")
                .containsEntry("UV index ordered, basking, low (UVI)", "")
                .containsEntry("Reason", "eyes shut")
                .containsEntry("Recorded by", told.person.fullName());
    }

    @Test
    void lampsAndTheirTimersAreThoseThatHang() throws Exception {
        told.hangALampLate();

        assertThat(table(enclosure + "/lamps.csv").rows().get(0))
                .containsEntry("Place", "basking tube")
                .containsEntry("Read since, warm", "no");
        assertThat(table(enclosure + "/timers.csv").column("Place")).hasSize(12).containsOnly("basking tube");
    }

    @Test
    void residentsComeWithTheirOrder() throws Exception {
        told.order();

        assertThat(table(enclosure + "/residents.csv").rows().get(0))
                .containsEntry("Name", told.home.animal().name())
                .containsEntry("Species", "Pogona vitticeps")
                .containsEntry("Vet’s order", "ultraviolet off");
    }

    @Test
    void everyVersionOfATargetComesLimitByLimit() throws Exception {
        Map<String, String> basking =
                row("/targets/" + told.home.animal().speciesId() + ".csv", "Where the limit holds", "basking");

        assertThat(basking)
                .containsEntry("Target, version", "1")
                .containsEntry("Limit, low, in the unit", "2.9")
                .containsEntry("Limit, high, in the unit", "7.4");
    }

    private CsvTable table(String path) throws Exception {
        return CsvTable.of(everybody
                .see(path)
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray());
    }

    private Map<String, String> row(String path, String title, String cell) throws Exception {
        return table(path).rows().stream()
                .filter(row -> cell.equals(row.get(title)))
                .findFirst()
                .orElseThrow();
    }
}
