package dapple.check;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.stringContainsInOrder;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** A tube without spectrum 0.68 m over the floor, above a slab of 0.2 m and under no target's photoperiod. */
@PagesTest
class ChecksPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private Rigs rigs;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD, Role.SUPERVISOR);
        home = homes.lit(
                site, lead, collection.species(site, lead, "Tiliqua scincoides", new UvZone(2, LightMethod.SUNBEAM)));
    }

    @Test
    void whatFailsStandsBeforeWhatCannotBeSaidAndWhatHolds() throws Exception {
        see(stringContainsInOrder(
                "data-check=\"SPECTRUM\" data-outcome=\"FAILS\"",
                "data-check=\"BALLAST\" data-outcome=\"UNKNOWN\"",
                "data-check=\"FIRE\" data-outcome=\"HOLDS\""));
    }

    @Test
    void aCheckHasItsWordItsSentenceAndItsSource() throws Exception {
        see(allOf(
                containsString("does not hold"),
                containsString("No spectrum, report or waiver is on file for L"),
                containsString("Gardiner, Baines, Pandher 2009, read in secondary texts")));
    }

    @Test
    void theCautionsOfWhatFailsStandBesideIt() throws Exception {
        see(allOf(containsString("data-caution=\"SPECTRUM\""), containsString("data-caution=\"MAINS\"")));
    }

    @Test
    void theRigLeadsToItsChecks() throws Exception {
        pages.perform(get("/enclosures/" + home.enclosureId() + "/rig").with(collection.as(lead)))
                .andExpect(content().string(containsString("/light#checks")));
    }

    /** From 0.48 m above the slab to 4 cm: a tube wants 5 cm. */
    @Test
    void aChangeSaysWhichChecksChangeBeforeItIsMade() throws Exception {
        preview("0.24")
                .andExpect(content()
                        .string(allOf(
                                containsString("Checks that change"),
                                stringContainsInOrder("data-check=\"FIRE\" data-outcome=\"FAILS\"", "was: holds"),
                                containsString("data-caution=\"HEAT\""))));
    }

    @Test
    void aChangeOfNothingChangesNoCheck() throws Exception {
        preview("0.68")
                .andExpect(content()
                        .string(allOf(
                                containsString("No check changes its outcome."),
                                containsString("Still do not hold"),
                                not(containsString("was: holds")))));
    }

    private void see(Matcher<String> page) throws Exception {
        pages.perform(get("/enclosures/" + home.enclosureId() + "/light").with(collection.as(lead)))
                .andExpect(status().isOk())
                .andExpect(content().string(page));
    }

    private ResultActions preview(String height) throws Exception {
        long fitting = rigs.at(site.id(), home.enclosureId(), clock.instant())
                .fittings()
                .get(0)
                .id();
        LocalDateTime at = LocalDateTime.ofInstant(clock.instant().minus(Duration.ofHours(2)), site.timeZone());
        return pages.perform(post("/enclosures/" + home.enclosureId() + "/rig/lamps/" + fitting + "/move/preview")
                .with(csrf())
                .with(collection.as(lead))
                .param("key", UUID.randomUUID().toString())
                .param("seen", String.valueOf(rigs.lastRecorded(site.id(), home.enclosureId())))
                .param("at", at.toString().substring(0, 16))
                .param("note", "")
                .param("place", "basking tube")
                .param("xMetres", "0.6")
                .param("yMetres", "0.3")
                .param("zMetres", height)
                .param("lengthTo", "0"));
    }
}
