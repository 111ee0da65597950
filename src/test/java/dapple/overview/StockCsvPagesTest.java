package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.Lamps;
import dapple.light.quantity.Quantity;
import dapple.overview.AuditStory.Told;
import dapple.people.Role;
import dapple.site.SourceMark;
import dapple.testing.Asking;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** Points, doors, the library, what was measured of a lamp, what happened to a meter and what was decided, as files. */
@PagesTest
class StockCsvPagesTest {
    @Autowired
    private AuditStory story;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Lamps lamps;

    @Autowired
    private MockMvc pages;

    private Told told;
    private Asking everybody;

    @BeforeEach
    void begin() {
        told = story.begin();
        everybody = new Asking(pages, collection.as(collection.person(told.site, Role.values())));
    }

    @Test
    void everyListIsOfferedOnItsPageAndComes() throws Exception {
        for (String list : List.of(
                "/enclosures/" + told.home.enclosureId(),
                "/doors",
                "/library",
                "/lamps/" + measuredLamp(),
                "/records/import")) {
            everybody.see(list).andExpect(content().string(containsString("href=\"" + list + ".csv\"")));
            everybody
                    .see(list + ".csv")
                    .andExpect(status().isOk())
                    .andExpect(content().contentType("text/csv;charset=UTF-8"));
        }
    }

    @Test
    void pointsComeWithWhatIsReadThere() throws Exception {
        assertThat(first("/enclosures/" + told.home.enclosureId() + ".csv"))
                .containsEntry("Point", "P1")
                .containsEntry("What the point stands for", "basking")
                .containsEntry("Quantity", "UV index");
    }

    @Test
    void aDoorWithoutACodeStandsToo() throws Exception {
        assertThat(table("/doors.csv").rows()).hasSize(1);
        assertThat(first("/doors.csv")).containsEntry("Code on the door", "");
    }

    @Test
    void theLibraryIsSearchedAsOnThePage() throws Exception {
        assertThat(table("/library.csv?name=Pogona vitticeps").column("UV zone"))
                .containsExactly("3");
        assertThat(table("/library.csv?name=no such").rows()).isEmpty();
    }

    @Test
    void whatWasMeasuredOfALampComesWithItsDistance() throws Exception {
        assertThat(first("/lamps/" + measuredLamp() + ".csv"))
                .containsEntry("Quantity", "UV index")
                .containsEntry("Amount, corrected", "3.5")
                .containsEntry("Distance (m)", "0.3")
                .containsEntry("Taken by", told.person.fullName())
                .containsEntry("Counts", "yes");
    }

    @Test
    void whatHappenedToAMeterComesWithItsNote() throws Exception {
        String meter = "/meters/" + told.meter.id();
        everybody.send(
                meter + "/events/new",
                Map.of(
                        "key",
                        UUID.randomUUID().toString(),
                        "kind",
                        "DROPPED",
                        "at",
                        "2026-03-01T10:00",
                        "note",
                        "-by the door"));

        assertThat(first(meter + "/practice.csv"))
                .containsEntry("What happened", "dropped")
                .containsEntry("Note", "'-by the door")
                .containsEntry("Shown", "");
    }

    @Test
    void aDecisionComesGuardedWithTheStateThatItWasMadeIn() throws Exception {
        told.readOverTheCeiling();
        String finding = "/review/" + told.home.enclosureId();
        everybody.send(finding, Map.of("key", UUID.randomUUID().toString(), "kind", "NOTE", "text", "=lamp lowered"));

        assertThat(first(finding + ".csv"))
                .containsEntry("Decision", "note")
                .containsEntry("State", "over the ceiling")
                .containsEntry("In words", "'=lamp lowered");
    }

    private long measuredLamp() {
        LampFacts lamp = collection.lamp(told.site, collection.lampModel(told.site, LampClass.TUBE_T5));
        LampOutput output = new LampOutput(Quantity.UV_INDEX, 3.5, 0.3, 0.1, SourceMark.MEASURED, "bench");
        lamps.measure(told.site.id(), lamp.id(), output, told.minutesAgo(5), told.person.personId());
        return lamp.id();
    }

    private CsvTable table(String path) throws Exception {
        return CsvTable.of(everybody
                .see(path)
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray());
    }

    private Map<String, String> first(String path) throws Exception {
        return table(path).rows().get(0);
    }
}
