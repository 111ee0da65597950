package dapple.copying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.Served;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@PagesTest
class CopyPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private Copying copying;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SpeciesFacts species;
    private Home home;
    private EnclosureFacts original;
    private Asking asking;
    private String page;
    private String copies;
    private Map<String, String> form;

    @BeforeEach
    void furnish() {
        site = collection.site();
        SignedIn lead = collection.person(site, Role.LIGHTING_LEAD);
        species = collection.species(site, "Pogona vitticeps");
        home = homes.lit(site, lead, species);
        original = enclosures.get(site.id(), home.enclosureId());
        asking = new Asking(pages, collection.as(lead));
        page = "/enclosures/" + original.id() + "/copy";
        UUID key = UUID.randomUUID();
        copies = "/enclosures/" + original.id() + "/copies/" + key;
        form = Map.of(
                "key", key.toString(),
                "seen", copying.original(site.id(), original.id()).mark(),
                "codes", "V02\r\n V03 \r\n\r\n",
                "roomId", String.valueOf(original.roomId()),
                "at", "2026-01-05T09:00",
                "lamps", "NEW",
                "burnHours", "");
    }

    @Test
    void whoArrangesFindsTheWayThere() throws Exception {
        asking.see("/enclosures/" + original.id()).andExpect(content().string(containsString(page)));
        asking.see("/enclosures/" + original.id() + "/edit").andExpect(content().string(containsString(page)));
    }

    @Test
    void thePageSaysWhatIsCopiedAndWarns() throws Exception {
        asking.see(page)
                .andExpect(content().string(containsString("P1 basking")))
                .andExpect(content().string(containsString("lid mesh, slab")))
                .andExpect(content().string(containsString("data-caution=\"HEAT\"")))
                .andExpect(content().string(containsString("data-caution=\"MAINS\"")))
                .andExpect(content().string(containsString("data-caution=\"ULTRAVIOLET\"")))
                .andExpect(content().string(containsString("data-caution=\"MERCURY\"")))
                .andExpect(content().string(containsString("data-caution=\"FIRST_LIGHT\"")));
    }

    @Test
    void theCopiesAreListedWithTheirLamps() throws Exception {
        asking.send(page, form).andExpect(redirectedUrl(copies));
        asking.see(copies)
                .andExpect(content().string(containsString("2 enclosures, made")))
                .andExpect(content().string(containsString("V03-1")));
    }

    @Test
    void aFormSentTwiceMakesNothingTwice() throws Exception {
        asking.send(page, form).andExpect(redirectedUrl(copies));
        asking.send(page, form).andExpect(redirectedUrl(copies));
        assertThat(enclosures.all(site.id())).hasSize(3);
    }

    @Test
    void aStaleFormMakesNothingAndKeepsWhatWasTyped() throws Exception {
        enclosures.serve(site.id(), home.shade().id(), Served.species(Set.of(species.id())));
        asking.send(page, form)
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("has been changed since the form was made")))
                .andExpect(content().string(containsString("V03")));
        assertThat(enclosures.all(site.id())).hasSize(1);
    }

    @Test
    void aTakenCodeIsNamedAtItsField() throws Exception {
        asking.send(page, form, "codes", "V02\n" + original.code())
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("has the code " + original.code() + " already")))
                .andExpect(content().string(containsString("V02")));
        assertThat(enclosures.all(site.id())).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "codes, '', Enter at least one code.",
        "codes, ' ', Enter at least one code.",
        "codes, 'V02\nv02', v02 stands there twice.",
        "codes, V0123456789012345, is too long here: at most 16 characters",
        "codes, 'V\u00002', 'without other control characters'",
        "codes, '1\n2\n3\n4\n5\n6\n7\n8\n9\n10\n11\n12\n13\n14\n15\n16\n17\n18\n19\n20\n21\n22\n23\n24\n25\n26\n27\n28\n29\n30\n31', Enter at most 30 codes at once.",
        "roomId, 999999, Choose a room.",
        "roomId, kitchen, roomId-wrong",
        "roomId, '', roomId-wrong",
        "at, '', Enter a day and a time.",
        "at, soon, at-wrong",
        "at, 2199-01-01T00:00, at-wrong",
        "at, 2026-03-29T01:30, This time did not exist",
        "at, 2025-10-26T01:30, This time came twice",
        "lamps, STOLEN, lamps-wrong",
        "burnHours, 12, 'Leave this empty, or choose used lamps.'",
        "burnHours, NaN, burnHours-wrong",
        "burnHours, 1e400, burnHours-wrong",
        "burnHours, -1, burnHours-wrong"
    })
    void aWrongFieldComesBackWithAMessage(String field, String typed, String message) throws Exception {
        asking.send(page, form, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)))
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")));
        assertThat(enclosures.all(site.id())).hasSize(1);
    }

    @Test
    void ofUsedLampsTheHoursAreAskedFor() throws Exception {
        asking.send(page, form, "lamps", "USED")
                .andExpect(content().string(containsString("Enter how long they have burnt")));
        assertThat(enclosures.all(site.id())).hasSize(1);
    }

    @Test
    void aRoomOfAnotherSiteIsNoChoice() throws Exception {
        long strange = enclosures.addRoom(collection.site().id(), "Elsewhere", 1);
        asking.send(page, form, "roomId", String.valueOf(strange))
                .andExpect(content().string(containsString("Choose a room.")));
    }

    @Test
    void aFormWithoutItsKeyIsNotTaken() throws Exception {
        Map<String, String> keyless = new HashMap<>(form);
        keyless.remove("key");
        asking.send(page, keyless).andExpect(status().isOk());
        assertThat(enclosures.all(site.id())).hasSize(1);
    }

    @Test
    void anotherSiteFindsNeitherOriginalNorCopies() throws Exception {
        asking.send(page, form);
        Asking stranger = new Asking(pages, collection.as(collection.person(collection.site(), Role.LIGHTING_LEAD)));
        stranger.see(page).andExpect(status().isNotFound());
        stranger.send(page, form).andExpect(status().isNotFound());
        stranger.see(copies).andExpect(status().isNotFound());
    }

    /** Who may not change rigs does not hang lamps by copying either. */
    @Test
    void anAdministratorIsNotOfferedIt() throws Exception {
        Asking administrator = new Asking(pages, collection.as(collection.person(site, Role.ADMINISTRATOR)));
        administrator.see(page).andExpect(status().isForbidden());
        administrator
                .see("/enclosures/" + original.id() + "/edit")
                .andExpect(content().string(not(containsString(page))));
    }
}
