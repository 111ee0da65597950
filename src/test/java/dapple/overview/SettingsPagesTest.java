package dapple.overview;

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
import dapple.site.RepeatsAsked;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class SettingsPagesTest {
    private static final Settings OTHERS =
            new Settings(7, 20, 10, 30, 20, 0.7, 1.4, 10, 4.5, true, true, RepeatsAsked.BASKING, true, 6);

    @Autowired
    private TestCollection collection;

    @Autowired
    private Sites sites;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;

    @BeforeEach
    void hire() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
    }

    @Test
    void eachUsualValueIsMarkedAsPracticeOrAssumption() throws Exception {
        see("/settings")
                .andExpect(content().string(containsString("Usually 9; common practice, no source.")))
                .andExpect(content().string(containsString("Usually 1.25; common practice, no source.")))
                .andExpect(content().string(containsString("Usually 3; assumed.")));
    }

    @Test
    void whatIsSettledIsKept() throws Exception {
        send(form()).andExpect(redirectedUrl("/settings?saved"));
        assertThat(sites.settings(site.id())).isEqualTo(OTHERS);
    }

    @ParameterizedTest
    @CsvSource({
        "overdueAfterDays, 0",
        "overdueAfterDays, x",
        "overdueAfterDays, ''",
        "overdueAfterDays, 1e400",
        "overdueAfterDays, 1.5",
        "staleAfterDays, 366",
        "staleAfterDays, 6",
        "weakAfterDays, -1",
        "weakAfterDaysInZone1, NaN",
        "warmUpMinutes, 241",
        "lowestRatio, 1.01",
        "lowestRatio, 0",
        "lowestRatio, NaN",
        "highestRatio, 0.99",
        "highestRatio, 1e400",
        "carryDays, 61",
        "baskingHours, 24.5",
        "baskingHours, -1",
        "baskingHours, ''",
        "namesKeptMonths, -1",
        "namesKeptMonths, NaN",
        "namesKeptMonths, 1201"
    })
    void aWrongValueComesBackAsTypedWithAMessage(String field, String typed) throws Exception {
        Map<String, String> form = form();
        form.put(field, typed);
        send(form)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"" + typed + "\"")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "SOMEWHERE"})
    void whereRepeatsAreAskedIsOneOfThree(String typed) throws Exception {
        Map<String, String> form = form();
        form.put("repeatsAsked", typed);
        send(form).andExpect(status().isOk()).andExpect(content().string(containsString("id=\"repeatsAsked-wrong\"")));
    }

    @Test
    void namesAreKeptForEverWhereNothingIsEntered() throws Exception {
        Map<String, String> form = form();
        form.put("namesKeptMonths", "");
        send(form).andExpect(redirectedUrl("/settings?saved"));
        assertThat(sites.settings(site.id()).namesKept()).isEmpty();
    }

    @Test
    void aStaleFormComesBackWithBothStates() throws Exception {
        send(form());
        Map<String, String> late = form();
        late.put("overdueAfterDays", "5");
        send(late)
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("<dd>7</dd>")))
                .andExpect(content().string(containsString("value=\"5\"")))
                .andExpect(content().string(containsString("name=\"version\" value=\"1\"")));
    }

    @Test
    void aStaleFormCanBeSavedOverTheOther() throws Exception {
        send(form());
        Map<String, String> late = form();
        late.put("overdueAfterDays", "5");
        late.put("version", "1");
        send(late).andExpect(redirectedUrl("/settings?saved"));
    }

    @Test
    void historyTellsWhoSettledWhat() throws Exception {
        see("/settings/history").andExpect(content().string(containsString("Nothing has been changed yet.")));
        send(form());
        Map<String, String> again = form();
        again.put("warmUpMinutes", "25");
        again.put("version", "1");
        send(again);
        see("/settings/history")
                .andExpect(content().string(containsString(supervisor.fullName())))
                .andExpect(content().string(containsString("from 20 to 25")));
    }

    private static Map<String, String> form() {
        Map<String, String> form = new HashMap<>();
        form.put("version", "0");
        form.put("overdueAfterDays", "7");
        form.put("staleAfterDays", "20");
        form.put("weakAfterDays", "10");
        form.put("weakAfterDaysInZone1", "30");
        form.put("warmUpMinutes", "20");
        form.put("lowestRatio", "0.7");
        form.put("highestRatio", "1,4");
        form.put("carryDays", "10");
        form.put("baskingHours", "4.5");
        form.put("namesKeptMonths", "6");
        form.put("onePerson", "true");
        form.put("keepsDoses", "true");
        form.put("repeatsAsked", "BASKING");
        form.put("blindRepeats", "true");
        return form;
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(supervisor)));
    }

    private ResultActions send(Map<String, String> form) throws Exception {
        MockHttpServletRequestBuilder request = post("/settings").with(csrf()).with(collection.as(supervisor));
        form.forEach(request::param);
        return pages.perform(request);
    }
}
