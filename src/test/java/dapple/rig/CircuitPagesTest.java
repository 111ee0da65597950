package dapple.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.Enclosures;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.site.TakenException;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class CircuitPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Circuits circuits;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private RigChanging changing;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;

    @BeforeEach
    void begin() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
    }

    @Test
    void anEmptyListSaysSo() throws Exception {
        see("/circuits").andExpect(content().string(containsString("No circuit is entered yet.")));
    }

    @Test
    void aNewCircuitIsListedWithItsRoom() throws Exception {
        long room = enclosures.addRoom(site.id(), "Dry room", 1);
        send("/circuits/new", "A1", String.valueOf(room), "0").andExpect(redirectedUrl("/circuits"));
        see("/circuits").andExpect(content().string(allOf(containsString("A1"), containsString("Dry room"))));
    }

    @Test
    void aCircuitWithoutRoomServesTheWholeSite() throws Exception {
        send("/circuits/new", "A1", "", "0");
        see("/circuits").andExpect(content().string(containsString("the whole site")));
    }

    @Test
    void mainsElectricityIsWarnedOf() throws Exception {
        see("/circuits").andExpect(content().string(containsString("licensed electrician")));
    }

    @Test
    void howManyLampsHangOnItIsCounted() throws Exception {
        CircuitFacts circuit = circuits.add(site.id(), Optional.empty(), "A1");
        hang(circuit);
        hang(circuit);
        assertThat(circuits.lampsOn(site.id())).containsEntry(circuit.id(), 2L);
    }

    private void hang(CircuitFacts circuit) {
        LampFacts lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        Hanging hanging = new Hanging("tube", Optional.empty(), Optional.empty(), Optional.of(circuit.id()));
        changing.make(
                new RigEntry(
                        site.id(),
                        collection.emptyEnclosure(site),
                        clock.instant(),
                        "",
                        lead.personId(),
                        UUID.randomUUID(),
                        Optional.empty()),
                new LampStep.Fit(lamp.id(), hanging));
    }

    @ParameterizedTest
    @CsvSource({
        "'', '', Enter something here",
        "'   ', '', Enter something here",
        "A1, abc, Enter another value.",
        "A1, 999999, Choose a room of this site"
    })
    void whatIsWrongIsSaidAtItsField(String name, String room, String message) throws Exception {
        send("/circuits/new", name, room, "0")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)));
    }

    @Test
    void aNameThatIsTooLongIsKeptForMending() throws Exception {
        String name = "A".repeat(81);
        send("/circuits/new", name, "", "0").andExpect(content().string(containsString(name)));
        assertThat(circuits.all(site.id())).isEmpty();
    }

    @Test
    void anotherSitesRoomIsRefused() throws Exception {
        long strange = enclosures.addRoom(collection.site().id(), "Far room", 1);
        send("/circuits/new", "A1", String.valueOf(strange), "0")
                .andExpect(content().string(containsString("Choose a room of this site")));
    }

    @Test
    void aNameThatIsTakenIsRefusedInAnyCase() throws Exception {
        send("/circuits/new", "A1", "", "0");
        send("/circuits/new", "a1", "", "0").andExpect(content().string(containsString("has a circuit of this name")));
        assertThat(circuits.all(site.id())).hasSize(1);
    }

    @Test
    void itMayKeepItsOwnNameWhenItsRoomChanges() throws Exception {
        CircuitFacts circuit = circuits.add(site.id(), Optional.empty(), "A1");
        long room = enclosures.addRoom(site.id(), "Dry room", 1);
        send("/circuits/" + circuit.id(), "A1", String.valueOf(room), "0").andExpect(redirectedUrl("/circuits"));
        assertThat(circuits.all(site.id()).get(0).roomId()).contains(room);
    }

    @Test
    void itCannotTakeAnothersName() throws Exception {
        circuits.add(site.id(), Optional.empty(), "A1");
        CircuitFacts other = circuits.add(site.id(), Optional.empty(), "A2");
        send("/circuits/" + other.id(), "A1", "", "0")
                .andExpect(content().string(containsString("has a circuit of this name")));
    }

    @Test
    void aStaleFormComesBackWithBothStates() throws Exception {
        CircuitFacts circuit = circuits.add(site.id(), Optional.empty(), "A1");
        send("/circuits/" + circuit.id(), "theirs", "", "0");
        send("/circuits/" + circuit.id(), "mine", "", "0")
                .andExpect(status().isConflict())
                .andExpect(content().string(allOf(containsString("theirs"), containsString("value=\"mine\""))));
    }

    @Test
    void aStaleFormMayBeSavedOver() throws Exception {
        CircuitFacts circuit = circuits.add(site.id(), Optional.empty(), "A1");
        send("/circuits/" + circuit.id(), "theirs", "", "0");
        send("/circuits/" + circuit.id(), "mine", "", "1").andExpect(redirectedUrl("/circuits"));
        assertThat(circuits.all(site.id()).get(0).name()).isEqualTo("mine");
    }

    @Test
    void ofTwoWhoEnterOneNameAtOnceOneIsRefused() {
        Runnable add = () -> circuits.add(site.id(), Optional.empty(), "A1");
        assertThat(Together.run(add, add)).singleElement().isInstanceOf(TakenException.class);
        assertThat(circuits.all(site.id())).hasSize(1);
    }

    @Test
    void itsHistorySaysWhoRenamedIt() throws Exception {
        CircuitFacts circuit = circuits.add(site.id(), Optional.empty(), "A1");
        send("/circuits/" + circuit.id(), "B7", "", "0");
        lead = collection.person(site, Role.INSPECTOR);
        see("/circuits/" + circuit.id() + "/history").andExpect(content().string(containsString("from A1 to B7")));
    }

    @Test
    void anotherSitesCircuitIsNotFound() throws Exception {
        CircuitFacts circuit = circuits.add(site.id(), Optional.empty(), "A1");
        lead = collection.person(collection.site(), Role.LIGHTING_LEAD);
        see("/circuits/" + circuit.id()).andExpect(status().isNotFound());
        see("/circuits/" + circuit.id() + "/history").andExpect(status().isNotFound());
        send("/circuits/" + circuit.id(), "mine", "", "0").andExpect(status().isNotFound());
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"KEEPER", "VET", "INSPECTOR", "ADMINISTRATOR"})
    void whoMayNotChangeRigsOnlyLooks(Role role) throws Exception {
        circuits.add(site.id(), Optional.empty(), "A1");
        lead = collection.person(site, role);
        see("/circuits").andExpect(content().string(allOf(containsString("A1"), not(containsString("/circuits/new")))));
        send("/circuits/new", "A2", "", "0").andExpect(status().isForbidden());
    }

    @Test
    void itStandsInTheFormsOfTheRig() throws Exception {
        circuits.add(site.id(), Optional.empty(), "North wall A1");
        collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        see("/enclosures/" + collection.emptyEnclosure(site) + "/rig/lamps/new")
                .andExpect(content().string(containsString("North wall A1")));
    }

    @Test
    void theRigLinksToIt() throws Exception {
        see("/enclosures/" + collection.emptyEnclosure(site) + "/rig")
                .andExpect(content().string(containsString("href=\"/circuits\"")));
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(lead)));
    }

    private ResultActions send(String path, String name, String room, String version) throws Exception {
        return pages.perform(post(path)
                .param("version", version)
                .param("name", name)
                .param("roomId", room)
                .with(csrf())
                .with(collection.as(lead)));
    }
}
