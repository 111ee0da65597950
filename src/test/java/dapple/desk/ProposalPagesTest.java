package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.draft.DraftFacts;
import dapple.draft.DraftRig;
import dapple.draft.Drafts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.testing.DraftedHomes;
import dapple.testing.DraftedHomes.Drafted;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** Rigs looked for beside a draft of what hangs, from a tube that hangs and its model. */
@PagesTest
class ProposalPagesTest {
    /** A search takes seconds; how many is measured elsewhere. */
    private static final Duration LONG = Duration.ofSeconds(90);

    @Autowired
    private DraftedHomes homes;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Drafts drafts;

    @Autowired
    private MockMvc pages;

    private Drafted at;
    private long draftId;

    @BeforeEach
    void furnish() {
        at = homes.lit();
        draftId = at.draft("Plan A", at.installed());
    }

    @Test
    void aSearchEndsWithRigsOrWithWhatStandsInTheWay() throws Exception {
        assertThat(found())
                .contains("The search is done.", "What hangs now", "Make it a draft", "data-check=\"CEILING\"")
                .containsAnyOf("all that was weighed</h2>", "comes nearest</h2>");
    }

    /** The tube that hangs and its model hold mercury, and the model has no spectrum on file. */
    @Test
    void whoChoosesAmongRigsIsWarnedOfTheLampsInThem() throws Exception {
        assertThat(found())
                .contains("data-caution=\"MERCURY\"", "data-caution=\"SPECTRUM\"", "data-caution=\"MAINS\"")
                .doesNotContain("data-caution=\"OUTER_GLASS\"");
    }

    @Test
    void aRigThatWasFoundBecomesADraft() throws Exception {
        found();
        send(post(page() + "/draft").param("rig", "0")).andExpect(status().isFound());
        assertThat(drafts.of(at.place()))
                .hasSize(2)
                .extracting(DraftFacts::name)
                .anyMatch(name -> name.startsWith("Plan A, "));
    }

    @Test
    void theSameRigTwiceIsTwoDraftsWithNamesOfTheirOwn() throws Exception {
        found();
        send(post(page() + "/draft").param("rig", "0"));
        send(post(page() + "/draft").param("rig", "0")).andExpect(status().isFound());
        assertThat(drafts.of(at.place())).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"7", "x", "-1", ""})
    void aRigThatWasNotFoundIsNotThere(String rig) throws Exception {
        send(post(page() + "/draft").param("rig", rig)).andExpect(status().isNotFound());
    }

    @Test
    void beforeItIsAskedNothingIsFound() throws Exception {
        assertThat(body()).contains("Look for rigs").doesNotContain("The search is done");
    }

    @Test
    void aSearchThatIsStoppedFindsNothing() throws Exception {
        begin();
        send(post(page() + "/stop")).andExpect(redirectedUrl(page()));
        assertThat(body()).doesNotContain("<progress").containsAnyOf("The search was stopped", "The search is done");
    }

    @Test
    void anEnclosureWithoutCoordinatesSaysWhatItNeeds() throws Exception {
        long bare = collection.home(at.site(), at.lead(), at.skink()).enclosureId();
        long draft = drafts.make(
                new dapple.draft.DraftPlace(at.site().id(), bare),
                "Plan B",
                DraftRig.empty(),
                at.lead().personId());
        String there = "/enclosures/" + bare + "/desk/" + draft + "/proposals";
        send(post(there)).andExpect(redirectedUrl(there));
        await().atMost(LONG).until(() -> !body(there).contains("<progress"));
        assertThat(body(there)).contains("needs the inner size of the enclosure, and coordinates");
    }

    @Test
    void eachPersonHasASearchOfTheirOwn() throws Exception {
        found();
        SignedIn other = collection.person(at.site(), Role.SUPERVISOR);
        assertThat(pages.perform(get(page()).with(collection.as(other)))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .doesNotContain("The search is done");
    }

    @Test
    void aKeeperDoesNotLook() throws Exception {
        SignedIn keeper = collection.person(at.site(), Role.KEEPER);
        pages.perform(get(page()).with(collection.as(keeper))).andExpect(status().isForbidden());
    }

    @Test
    void anotherSiteDoesNotFindIt() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        pages.perform(post(page()).with(csrf()).with(collection.as(stranger))).andExpect(status().isNotFound());
    }

    private String page() {
        return at.desk() + "/" + draftId + "/proposals";
    }

    private void begin() throws Exception {
        send(post(page())).andExpect(redirectedUrl(page()));
    }

    private String found() throws Exception {
        begin();
        await().atMost(LONG).until(() -> !body().contains("<progress"));
        return body();
    }

    private String body() throws Exception {
        return body(page());
    }

    private String body(String page) throws Exception {
        return send(get(page)).andReturn().getResponse().getContentAsString();
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return pages.perform(request.with(csrf()).with(collection.as(at.lead())));
    }
}
