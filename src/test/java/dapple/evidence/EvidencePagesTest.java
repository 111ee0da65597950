package dapple.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
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
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class EvidencePagesTest {
    private static final Map<String, String> ROW =
            Map.of("zone", "SUNBEAM-4", "mark", "PUBLISHED_SECONDARY", "source", "a field study, its abstract");

    @Autowired
    private TestCollection collection;

    @Autowired
    private EvidenceKeeping evidence;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;
    private SpeciesFacts species;
    private String page;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        species = collection.species(site, "Furcifer pardalis");
        page = "/targets/" + species.id() + "/evidence";
    }

    @Test
    void aRowIsListedWithItsMarkSourceAndAuthor() throws Exception {
        send(page, ROW).andExpect(redirectedUrl(page));
        see(page)
                .andExpect(content()
                        .string(containsString("published, read in secondary texts: a field study, its abstract")))
                .andExpect(content().string(containsString("added by " + supervisor.fullName())));
    }

    @Test
    void whatTheLibrarySaysStandsBeside() throws Exception {
        see(page)
                .andExpect(content().string(containsString("The library says")))
                .andExpect(content().string(containsString("CONFLICT")));
    }

    @ParameterizedTest
    @CsvSource({"zone, ''", "zone, SHADE-3", "mark, RUMOUR", "source, ''"})
    void aWrongRowComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        Map<String, String> wrong = new HashMap<>(ROW);
        wrong.put(field, typed);
        send(page, wrong)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")));
    }

    @Test
    void aRowPostedTwiceIsStoredOnce() throws Exception {
        send(page, ROW);
        send(page, ROW).andExpect(content().string(containsString("This source is on record for the zone already.")));
    }

    @Test
    void aChoiceIsShownWithItsReason() throws Exception {
        choose("0", row(), "measured in the field").andExpect(redirectedUrl("/targets/" + species.id()));
        see("/targets/" + species.id())
                .andExpect(content().string(containsString("chosen by " + supervisor.fullName())))
                .andExpect(content().string(containsString("measured in the field")));
    }

    @Test
    void aChoiceNeedsAReason() throws Exception {
        choose("0", row(), " ").andExpect(content().string(containsString("id=\"reason-wrong\"")));
    }

    @Test
    void aChoiceNeedsARow() throws Exception {
        row();
        choose("0", "", "why not").andExpect(content().string(containsString("Choose one of the rows.")));
    }

    @Test
    void theSecondToChooseIsToldWithBothStates() throws Exception {
        String row = row();
        choose("0", row, "reason of the first");
        choose("0", row, "reason of the second")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("reason of the first")))
                .andExpect(content().string(containsString("value=\"reason of the second\"")))
                .andExpect(content().string(containsString("name=\"seen\" value=\"1\"")));
        assertThat(evidence.choices(site.id(), species.id())).hasSize(1);
    }

    private String row() throws Exception {
        send(page, ROW);
        return String.valueOf(evidence.of(site.id(), species.id()).get(0).id());
    }

    private ResultActions choose(String seen, String row, String reason) throws Exception {
        return send(page + "/choice", Map.of("seen", seen, "evidenceId", row, "reason", reason));
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(supervisor)));
    }

    private ResultActions send(String path, Map<String, String> form) throws Exception {
        MockHttpServletRequestBuilder request = post(path).with(csrf()).with(collection.as(supervisor));
        form.forEach(request::param);
        return pages.perform(request);
    }
}
