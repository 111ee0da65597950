package dapple.confirmation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.evidence.EvidenceFacts;
import dapple.evidence.EvidenceKeeping;
import dapple.evidence.NewChoice;
import dapple.evidence.NewEvidence;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.Targets;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class ConfirmationPagesTest {
    private static final String PAGE = "/targets/confirmation";
    private static final String EARLIER = "Judge earlier readings too";
    private static final Matcher<String> TICKED =
            matchesPattern("(?s).*<input type=\"checkbox\" id=\"earlier1\"[^>]*checked=\"checked\".*");

    @Autowired
    private TestCollection collection;

    @Autowired
    private EvidenceKeeping evidence;

    @Autowired
    private Targets targets;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;
    private SpeciesFacts dragon;
    private SpeciesFacts devil;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        dragon = collection.species(site, "Pogona vitticeps");
        devil = collection.species(site, "Moloch horridus");
    }

    @Test
    void theListSaysWhereEachSuggestionComesFrom() throws Exception {
        see(PAGE)
                .andExpect(content().string(containsString("suggested by the library, from memory, unverified")))
                .andExpect(content().string(containsString("Confirmed by " + supervisor.fullName())));
    }

    /** Those of zone 3 by the sunbeam method [baines2016]; the share of shade and the ceiling are common practice. */
    @Test
    void eachSuggestionSaysWhatItAsks() throws Exception {
        see(PAGE)
                .andExpect(content().string(containsString("<b>2.9 to 7.4 UVI</b>")))
                .andExpect(content().string(containsString("<b>at most 0.29 UVI</b>")))
                .andExpect(content().string(containsString("<b>below 8.0 UVI</b>")));
    }

    @Test
    void aSpeciesWithoutASuggestionAsksForEvidence() throws Exception {
        SpeciesFacts strange = collection.species(site, "Zonosaurus ignotus");
        see(PAGE)
                .andExpect(content().string(containsString("/targets/" + strange.id() + "/evidence")))
                .andExpect(content().string(not(containsString("id=\"species-" + strange.id() + "\""))));
    }

    @Test
    void manyAreConfirmedAtOnce() throws Exception {
        send("agreed with the team", dragon, devil).andExpect(redirectedUrl("/targets"));
        see("/targets").andExpect(content().string(not(containsString("no target"))));
        see(PAGE).andExpect(content().string(containsString("Every species of the site has a target.")));
    }

    @Test
    void nothingTickedIsAskedFor() throws Exception {
        send("agreed with the team")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Choose at least one.")))
                .andExpect(content().string(containsString("agreed with the team")));
    }

    @Test
    void aReasonIsAskedForAndTheTicksAreKept() throws Exception {
        send("", dragon)
                .andExpect(content().string(containsString("id=\"reason-wrong\"")))
                .andExpect(content().string(containsString("checked=\"checked\"")));
    }

    @Test
    void aZoneThatIsNoneIsAskedFor() throws Exception {
        MockHttpServletRequestBuilder request = form("agreed").param("species", String.valueOf(dragon.id()));
        pages.perform(request.param("zones[" + dragon.id() + "]", "SHADE-4"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"species-wrong\"")));
    }

    @Test
    void whatIsNoIdIsRefused() throws Exception {
        pages.perform(form("agreed").param("species", "1e400").param("zones[1e400]", "SUNBEAM-3"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"species-wrong\"")));
    }

    @Test
    void theSecondOfTwoIsToldAndNothingIsStored() throws Exception {
        send("the first", devil);
        send("the second", dragon, devil)
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("Moloch horridus has got a target or other evidence")))
                .andExpect(content().string(containsString("the second")))
                .andExpect(content().string(containsString("checked=\"checked\"")));
        assertThat(targets.newest(site.id(), dragon.id())).isEmpty();
    }

    @Test
    void earlierReadingsAreIncludedUnlessSomebodySaysOtherwise() throws Exception {
        see(PAGE)
                .andExpect(content().string(containsString(EARLIER)))
                .andExpect(content().string(not(TICKED)));
        read(collection.home(site, supervisor, dragon));
        see(PAGE).andExpect(content().string(TICKED));
    }

    @Test
    void targetsForEarlierReadingsSaySo() throws Exception {
        pages.perform(ticked("agreed", dragon).param("earlier", "true")).andExpect(redirectedUrl("/targets"));
        see("/targets").andExpect(content().string(containsString("earlier readings too")));
        see("/targets/" + dragon.id())
                .andExpect(content().string(containsString("It counts for readings taken before its approval too.")));
        see("/targets/" + dragon.id() + ".csv")
                .andExpect(content().string(containsString(",yes," + supervisor.fullName())));
    }

    @Test
    void targetsFromTheirApprovalOnSaySo() throws Exception {
        send("agreed", dragon).andExpect(redirectedUrl("/targets"));
        see("/targets").andExpect(content().string(not(containsString("earlier readings too"))));
        see("/targets/" + dragon.id()).andExpect(content().string(not(containsString("taken before its approval"))));
        see("/targets/" + dragon.id() + ".csv")
                .andExpect(content().string(containsString(",no," + supervisor.fullName())));
    }

    @Test
    void whatIsChosenOfEarlierReadingsComesBackAsSent() throws Exception {
        pages.perform(ticked("", dragon).param("earlier", "true"))
                .andExpect(content().string(TICKED));
        send("", dragon).andExpect(content().string(not(TICKED)));
    }

    @Test
    void evidenceChosenSinceIsShownWithTheWayToTheNextVersion() throws Exception {
        send("agreed", dragon);
        EvidenceFacts row = evidence.add(
                site.id(),
                new NewEvidence(
                        dragon.id(),
                        new UvZone(4, LightMethod.SUNBEAM),
                        SourceMark.PUBLISHED_SECONDARY,
                        "a later study",
                        supervisor.personId()));
        evidence.choose(site.id(), new NewChoice(dragon.id(), 1, row.id(), "newer", supervisor.personId()));
        see(PAGE).andExpect(content().string(containsString("/targets/" + dragon.id() + "/next?from=SUNBEAM-4")));
    }

    private void read(Home home) {
        VisitPlace place = new VisitPlace(
                UUID.randomUUID(), home.enclosureId(), home.basking().id());
        long meter = collection.meter(site).id();
        logging.log(Visitor.of(supervisor), new Entry(UUID.randomUUID(), place, meter, 9.3, clock.instant()));
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(supervisor)));
    }

    private ResultActions send(String reason, SpeciesFacts... ticked) throws Exception {
        return pages.perform(ticked(reason, ticked));
    }

    private MockHttpServletRequestBuilder ticked(String reason, SpeciesFacts... ticked) {
        MockHttpServletRequestBuilder request = form(reason)
                .param("zones[" + dragon.id() + "]", "SUNBEAM-3")
                .param("zones[" + devil.id() + "]", "SUNBEAM-4");
        for (SpeciesFacts one : ticked) {
            request.param("species", String.valueOf(one.id()));
        }
        return request;
    }

    private MockHttpServletRequestBuilder form(String reason) {
        return post(PAGE).param("reason", reason).with(csrf()).with(collection.as(supervisor));
    }
}
