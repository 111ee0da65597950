package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Who changed what: told to those who answer for it, and found from pages that they may open. */
@PagesTest
class InspectorPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn administrator;
    private SignedIn inspector;
    private SpeciesFacts species;
    private Home home;
    private LampFacts lamp;

    @BeforeEach
    void furnish() {
        site = collection.site();
        administrator = collection.person(site, Role.ADMINISTRATOR, Role.SUPERVISOR);
        inspector = collection.person(site, Role.INSPECTOR);
        species = collection.species(site, "Pogona vitticeps");
        home = collection.home(site, administrator, species);
        lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
    }

    @Test
    void aLampsHistorySaysWhoMovedItInTheStore() throws Exception {
        send(
                "/lamps/" + lamp.id() + "/edit",
                "version",
                "0",
                "tag",
                lamp.tag(),
                "modelId",
                String.valueOf(lamp.model().id()),
                "burnHours",
                "0",
                "storePlace",
                "cellar");
        see("/lamps/" + lamp.id() + "/history")
                .andExpect(content()
                        .string(allOf(
                                containsString("Place in store"),
                                containsString("from shelf to cellar"),
                                containsString(administrator.fullName()))));
    }

    @Test
    void aLampsHistoryNamesItsModel() throws Exception {
        see("/lamps/" + lamp.id() + "/history")
                .andExpect(content().string(containsString(lamp.model().name())));
    }

    @Test
    void aModelsHistoryTellsItsOutputsToo() throws Exception {
        see("/lamp-models/" + lamp.model().id() + "/history")
                .andExpect(content()
                        .string(allOf(
                                containsString("tube T5"),
                                containsString("thin tube"),
                                containsString("Output: source"),
                                containsString("invented for a test"))));
    }

    @Test
    void anAnimalsHistorySaysWhoRenamedIt() throws Exception {
        send(
                "/animals/" + home.animal().id() + "/edit",
                "version",
                "0",
                "kind",
                "INDIVIDUAL",
                "accessionNumber",
                home.animal().accessionNumber(),
                "name",
                "Basil",
                "speciesId",
                String.valueOf(species.id()),
                "sex",
                "MALE",
                "pigment",
                "NORMAL",
                "reach",
                "CLIMBS",
                "note",
                "");
        see("/animals/" + home.animal().id() + "/history")
                .andExpect(content()
                        .string(allOf(
                                containsString("from " + home.animal().name() + " to Basil"),
                                containsString("from unknown to male"),
                                containsString("Pogona vitticeps"))));
    }

    @Test
    void aSpeciesHistorySaysWhoRenamedIt() throws Exception {
        send(
                "/targets/" + species.id() + "/name",
                "version",
                "0",
                "scientificName",
                "Pogona vitticeps",
                "commonName",
                "central bearded dragon",
                "asTyped",
                "true");
        see("/targets/" + species.id() + "/history")
                .andExpect(content()
                        .string(allOf(
                                containsString("to central bearded dragon"),
                                containsString(administrator.fullName()))));
    }

    @ParameterizedTest
    @EnumSource
    void everyHistoryIsLinkedForAnInspector(Linked linked) throws Exception {
        see(linked.from(this))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("href=\"" + linked.to(this) + "\"")));
    }

    @ParameterizedTest
    @EnumSource
    void everyLinkOpensForAnInspector(Linked linked) throws Exception {
        see(linked.to(this)).andExpect(status().isOk());
    }

    @ParameterizedTest
    @EnumSource
    void noHistoryOfAnotherSiteIsFound(Linked linked) throws Exception {
        inspector = collection.person(collection.site(), Role.INSPECTOR);
        int found = see(linked.to(this)).andReturn().getResponse().getStatus();
        assertThat(found).isEqualTo(linked == Linked.SETTINGS ? 200 : 404);
    }

    @ParameterizedTest
    @EnumSource
    void aKeeperIsNotShownHistories(Linked linked) throws Exception {
        inspector = collection.person(site, Role.KEEPER);
        see(linked.to(this)).andExpect(status().isForbidden());
        see(linked.from(this)).andExpect(content().string(not(containsString("href=\"" + linked.to(this) + "\""))));
    }

    @Test
    void theHistoryOfSettingsOffersAnInspectorNoWayToTheForm() throws Exception {
        see("/settings/history").andExpect(content().string(not(containsString("href=\"/settings\""))));
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(inspector)));
    }

    private void send(String path, String... namesAndValues) throws Exception {
        var request = post(path).with(csrf()).with(collection.as(administrator));
        for (int at = 0; at < namesAndValues.length; at += 2) {
            request.param(namesAndValues[at], namesAndValues[at + 1]);
        }
        pages.perform(request).andExpect(status().is3xxRedirection());
    }

    /** Where each history is found from. */
    private enum Linked {
        LAMP,
        LAMP_MODEL,
        ANIMAL,
        SPECIES,
        SETTINGS,
        POINT;

        String from(InspectorPagesTest test) {
            return switch (this) {
                case LAMP -> "/lamps/" + test.lamp.id();
                case LAMP_MODEL -> "/lamp-models/" + test.lamp.model().id();
                case ANIMAL -> "/animals/" + test.home.animal().id();
                case SPECIES -> "/targets/" + test.species.id();
                case SETTINGS -> "/more";
                case POINT -> "/enclosures/" + test.home.enclosureId() + "/readings";
            };
        }

        String to(InspectorPagesTest test) {
            return switch (this) {
                case LAMP, LAMP_MODEL, ANIMAL, SPECIES -> from(test) + "/history";
                case SETTINGS -> "/settings/history";
                case POINT ->
                    "/enclosures/" + test.home.enclosureId() + "/points/"
                            + test.home.basking().id() + "/history";
            };
        }
    }
}
