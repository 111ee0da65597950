package dapple.animal;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class AnimalPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Animals animals;

    @Autowired
    private Counting counting;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn keeper;
    private AnimalFacts animal;
    private String edit;
    private Map<String, String> form;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        SpeciesFacts species = collection.species(site, "Pogona vitticeps");
        animal = collection.home(site, keeper, species).animal();
        edit = "/animals/" + animal.id() + "/edit";
        form = Map.of(
                "version", "0",
                "kind", "INDIVIDUAL",
                "accessionNumber", "2026-0999",
                "name", "Basil",
                "speciesId", String.valueOf(species.id()),
                "sex", "FEMALE",
                "pigment", "REDUCED",
                "reach", "CLIMBS");
    }

    @Test
    void aNewAnimalIsListed() throws Exception {
        send("/animals/new", form).andExpect(status().is3xxRedirection());
        see("/animals").andExpect(content().string(containsString("2026-0999")));
    }

    @Test
    void anAnimalPostedTwiceIsStoredOnce() throws Exception {
        send("/animals/new", form);
        send("/animals/new", form)
                .andExpect(content().string(containsString("no number is used twice")))
                .andExpect(content().string(containsString("value=\"Basil\"")));
    }

    @Test
    void aNewGroupIsListedWithItsCount() throws Exception {
        send("/animals/new", with(Map.of("kind", "GROUP", "count", "17", "since", "2026-05-04T10:30")))
                .andExpect(status().is3xxRedirection());
        see("/animals").andExpect(content().string(containsString("group of 17")));
    }

    @Test
    void aGroupNeedsACountAndADay() throws Exception {
        send("/animals/new", with(Map.of("kind", "GROUP")))
                .andExpect(content().string(containsString("id=\"count-wrong\"")))
                .andExpect(content().string(containsString("id=\"since-wrong\"")));
    }

    @ParameterizedTest
    @CsvSource({
        "accessionNumber, ''",
        "accessionNumber, 01234567890123456789012345678901234567890",
        "name, ''",
        "speciesId, ''",
        "speciesId, some",
        "sex, BOTH",
        "pigment, ''",
        "born, last year",
        "born, 2999",
        "born, 2026-02-30",
        "born, 1700",
        "reachMetres, 1e400",
        "reachMetres, -1",
        "reachMetres, 0.3",
        "lengthMetres, long",
        "lengthMetres, NaN",
        "lengthMetres, 0",
        "lengthMetres, 16",
        "lengthMetres, 0.1234",
        "lengthOn, 2026-05-04",
        "lengthOn, soon"
    })
    void aWrongFieldComesBackWithAMessage(String field, String typed) throws Exception {
        String wrong = field.equals("lengthOn") && typed.startsWith("2026") ? "lengthMetres" : field;
        send("/animals/new", with(Map.of(field, typed)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + wrong + "-wrong\"")));
    }

    @ParameterizedTest
    @CsvSource({
        "many, Enter a whole number from 0 to 9999",
        "0, Enter a whole number from 1 to 9999",
        "-3, Enter a whole number from 1 to 9999",
        "1.5, Enter a whole number from 0 to 9999"
    })
    void aWrongCountComesBackAsTyped(String count, String message) throws Exception {
        send("/animals/new", with(Map.of("kind", "GROUP", "count", count, "since", "2026-05-04T10:30")))
                .andExpect(content().string(containsString(message)))
                .andExpect(content().string(containsString("value=\"" + count + "\"")));
    }

    @ParameterizedTest
    @CsvSource({
        "2999-05-04T10:30, Enter a year from 1950 to 2199.",
        "2199-05-04T10:30, Enter a time that is past.",
        "2026-03-29T01:30, This time did not exist",
        "2025-10-26T01:30, This time came twice"
    })
    void aGroupBeginsAtATimeThatWas(String since, String message) throws Exception {
        send("/animals/new", with(Map.of("kind", "GROUP", "count", "3", "since", since)))
                .andExpect(content().string(containsString(message)))
                .andExpect(content().string(containsString("value=\"" + since + "\"")));
    }

    @Test
    void aGroundDwellerNeedsItsReach() throws Exception {
        send("/animals/new", with(Map.of("reach", "GROUND")))
                .andExpect(content().string(containsString("Enter how high it reaches")));
    }

    @Test
    void aLengthNeedsItsDay() throws Exception {
        send("/animals/new", with(Map.of("lengthMetres", "0.45")))
                .andExpect(content().string(containsString("id=\"lengthOn-wrong\"")));
    }

    @Test
    void noLengthIsMeasuredTomorrow() throws Exception {
        String later = clock.instant().toString().substring(0, 4).replace("2", "3") + "-01-01";
        send("/animals/new", with(Map.of("lengthMetres", "0.45", "lengthOn", later)))
                .andExpect(content().string(containsString("Enter a day that is past.")));
    }

    @Test
    void anotherSitesSpeciesIsNotFound() throws Exception {
        long foreign = collection.species(collection.site(), "Agama agama").id();
        send("/animals/new", with(Map.of("speciesId", String.valueOf(foreign)))).andExpect(status().isNotFound());
    }

    @Test
    void aControlCharacterIsNoNote() throws Exception {
        send("/animals/new", with(Map.of("note", "nul\u0000")))
                .andExpect(content().string(containsString("id=\"note-wrong\"")));
    }

    @Test
    void whoEntersPigmentIsSentToTheVet() throws Exception {
        see("/animals/new").andExpect(content().string(containsString("data-caution=\"PIGMENT\"")));
    }

    @Test
    void aChangeIsShownAgain() throws Exception {
        send(edit, with(Map.of("born", "2019", "reach", "GROUND", "reachMetres", "0,3", "note", "two\nlines")))
                .andExpect(redirectedUrl("/animals/" + animal.id()));
        see(edit)
                .andExpect(content().string(containsString("value=\"2019\"")))
                .andExpect(content().string(containsString("value=\"0.3\"")));
    }

    @Test
    void theNewestLengthStandsFirst() throws Exception {
        send(edit, with(Map.of("lengthMetres", "0.401", "lengthOn", "2026-05-04")));
        send(edit, with(Map.of("version", "1", "lengthMetres", "0.380", "lengthOn", "2026-02-04")));
        see(edit)
                .andExpect(content()
                        .string(org.hamcrest.Matchers.stringContainsInOrder(
                                "0.401 m, measured 4 May 2026", "0.38 m, measured 4 Feb 2026")));
    }

    @Test
    void aStaleChangeComesBackWithBothStates() throws Exception {
        send(edit, with(Map.of("name", "FIRST")));
        send(edit, with(Map.of("name", "SECOND")))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("<dd>FIRST</dd>")))
                .andExpect(content().string(containsString("value=\"SECOND\"")))
                .andExpect(content().string(containsString("name=\"version\" value=\"1\"")));
    }

    @Test
    void aClosedRecordHasNoForm() throws Exception {
        counting.record(
                site.id(),
                animal.id(),
                Happening.DEATH,
                1,
                new Happened(now(), "for a test", UUID.randomUUID(), keeper.personId()));
        see(edit)
                .andExpect(content().string(containsString("A supervisor can open it again.")))
                .andExpect(content().string(not(containsString("name=\"accessionNumber\""))));
    }

    @Test
    void anotherSitesAnimalIsNotFound() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.KEEPER);
        pages.perform(get(edit).with(collection.as(stranger))).andExpect(status().isNotFound());
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"LIGHTING_LEAD", "INSPECTOR"})
    void whoMayNotKeepAnimalsSeesNoWayToChangeThem(Role role) throws Exception {
        SignedIn person = collection.person(site, role);
        pages.perform(get("/animals/" + animal.id()).with(collection.as(person)))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("/edit"))))
                .andExpect(content().string(not(containsString("/events/new"))));
    }

    private Instant now() {
        return clock.instant();
    }

    private Map<String, String> with(Map<String, String> others) {
        Map<String, String> changed = new HashMap<>(form);
        changed.putAll(others);
        return changed;
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(keeper)));
    }

    private ResultActions send(String path, Map<String, String> fields) throws Exception {
        MockHttpServletRequestBuilder request = post(path).with(csrf()).with(collection.as(keeper));
        fields.forEach(request::param);
        return pages.perform(request);
    }
}
