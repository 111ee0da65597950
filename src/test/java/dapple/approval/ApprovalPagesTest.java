package dapple.approval;

import static org.assertj.core.api.Assertions.assertThat;
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
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.LimitPlace;
import dapple.target.Targets;
import dapple.target.VersionDetails;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
class ApprovalPagesTest {
    private static final Pattern SHOWN = Pattern.compile("name=\"shown\" value=\"([^\"]*)\"");

    @Autowired
    private TestCollection collection;

    @Autowired
    private Targets targets;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;
    private SpeciesFacts species;
    private String next;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        species = collection.species(site, supervisor, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        next = "/targets/" + species.id() + "/next";
    }

    @Test
    void speciesWithoutATargetComeFirst() throws Exception {
        collection.species(site, "Zonosaurus maximus");
        String page = text(see("/targets"));
        assertThat(page.indexOf("Zonosaurus maximus")).isLessThan(page.indexOf("Pogona vitticeps"));
    }

    @Test
    void theListSaysHowFarTheWeakestLimitIsKnown() throws Exception {
        see("/targets")
                .andExpect(content().string(containsString("UV zone 3, sunbeam method")))
                .andExpect(content().string(containsString("common practice, no source")))
                .andExpect(content().string(containsString("version 1, by " + supervisor.fullName())));
    }

    @Test
    void anEmptySiteIsToldSo() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.KEEPER);
        pages.perform(get("/targets").with(collection.as(stranger)))
                .andExpect(content().string(containsString("There is no species at this site yet.")));
    }

    @Test
    void aKeeperLooksAndChangesNothing() throws Exception {
        SignedIn keeper = collection.person(site, Role.KEEPER);
        pages.perform(get("/targets/" + species.id()).with(collection.as(keeper)))
                .andExpect(content().string(containsString("2.9 to 7.4")))
                .andExpect(content().string(not(containsString("/next"))));
    }

    @Test
    void theFormStartsFromTheVersionInForce() throws Exception {
        see(next)
                .andExpect(content().string(containsString("name=\"cells[UV_INDEX-BASKING-high]\" value=\"7.4\"")))
                .andExpect(content().string(containsString("name=\"seen\" value=\"1\"")));
    }

    @Test
    void theFormStartsFromAZoneThatIsAskedFor() throws Exception {
        see(next + "?from=SHADE-2")
                .andExpect(content().string(containsString("name=\"cells[UV_INDEX-BASKING-high]\" value=\"1\"")));
    }

    @Test
    void theFormWarnsInShortAlways() throws Exception {
        see(next)
                .andExpect(content().string(containsString("Whoever raises a target")))
                .andExpect(content().string(not(containsString("data-caution=\"TARGET_RAISED\""))));
    }

    @Test
    void aRaisedTargetIsCautionedBeforeItIsApproved() throws Exception {
        send(cells("3.0", "7.4", "0.3", "8"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("data-caution=\"TARGET_RAISED\"")))
                .andExpect(content().string(containsString("3.0 to 7.4 UVI")));
    }

    @Test
    void aLoweredTargetIsNotCautioned() throws Exception {
        send(cells("2", "7", "0.2", "7.5"))
                .andExpect(content().string(containsString("What would change")))
                .andExpect(content().string(not(containsString("data-caution=\"TARGET_RAISED\""))));
    }

    @Test
    void nothingIsStoredBeforeTheChangesWereShown() throws Exception {
        send(cells("3.0", "7.4", "0.3", "8"));
        assertThat(targets.versions(site.id(), species.id())).hasSize(1);
    }

    @Test
    void whatWasShownIsApproved() throws Exception {
        approve(cells("3,0", "7.4", "0.3", "8")).andExpect(redirectedUrl("/targets/" + species.id()));
        see("/targets/" + species.id())
                .andExpect(content().string(containsString("3.0 to 7.4")))
                .andExpect(content().string(containsString("Version 2: UV zone 3, sunbeam method")))
                .andExpect(content().string(containsString("Reason: watched for a season")))
                .andExpect(content().string(containsString("Earlier versions")));
    }

    @Test
    void whatWasNotShownIsShownAgain() throws Exception {
        Map<String, String> form = shown(cells("3.0", "7.4", "0.3", "8"));
        form.put("cells[UV_INDEX-CEILING-high]", "9");
        send(form).andExpect(status().isOk()).andExpect(content().string(containsString("below 9.0 UVI")));
    }

    @Test
    void anApprovalSentTwiceMakesOneVersion() throws Exception {
        Map<String, String> form = shown(cells("3.0", "7.4", "0.3", "8"));
        send(form);
        send(form).andExpect(redirectedUrl("/targets/" + species.id()));
        assertThat(targets.versions(site.id(), species.id())).hasSize(2);
    }

    @Test
    void theSecondOfTwoIsToldWithBothStates() throws Exception {
        Map<String, String> first = shown(cells("3.0", "7.4", "0.3", "8"));
        Map<String, String> second = shown(cells("2.5", "6", "0.2", "7"));
        send(first);
        send(second)
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("3.0 to 7.4")))
                .andExpect(content().string(containsString("value=\"2.5\"")))
                .andExpect(content().string(containsString("name=\"seen\" value=\"2\"")));
    }

    @ParameterizedTest
    @CsvSource({
        "8, 7.4, 0.3, 8.5, UV_INDEX-BASKING-low, This is above the high end of the range.",
        "2, 7.4, 2.1, 8, UV_INDEX-SHADE-high, Shade must be darker.",
        "2, 7.4, 0.2, 7, UV_INDEX-CEILING-high, This is below the high end of the basking range."
    })
    void inconsistentCellsAreRefusedAtTheField(
            String low, String high, String shade, String ceiling, String field, String message) throws Exception {
        send(cells(low, high, shade, ceiling))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"cell-" + field + "-wrong\"")))
                .andExpect(content().string(containsString(message)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"much", "1e400", "NaN", "-1", "100", "1.234", "999999999999999"})
    void aWrongNumberComesBackAsTyped(String typed) throws Exception {
        send(cells(typed, "7.4", "0.3", "8"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"cell-UV_INDEX-BASKING-low-wrong\"")))
                .andExpect(content().string(containsString("value=\"" + typed + "\"")))
                .andExpect(content().string(containsString("watched for a season")));
    }

    @Test
    void aMissingCeilingIsSuggested() throws Exception {
        send(cells("1.1", "3.0", "0.1", ""))
                .andExpect(content().string(containsString("Common practice, no source: 3.75, the smaller of 8 and")));
    }

    @ParameterizedTest
    @CsvSource({
        "cells[UV_INDEX-SHADE-mark], '', cell-UV_INDEX-SHADE-mark",
        "cells[UV_INDEX-SHADE-mark], RUMOUR, cell-UV_INDEX-SHADE-mark",
        "cells[UV_INDEX-SHADE-source], ' ', cell-UV_INDEX-SHADE-source",
        "zone, SHADE-4, zone",
        "reason, '', reason",
        "cells[ILLUMINANCE-BASKING-low], 5000, cell-ILLUMINANCE-BASKING-high",
        "hours[6], 25, hours-6",
        "hours[6], 14, hours-1"
    })
    void whatIsMissingIsAskedForAtTheField(String field, String typed, String at) throws Exception {
        Map<String, String> form = cells("2.9", "7.4", "0.29", "8");
        form.put(field, typed);
        send(form).andExpect(status().isOk()).andExpect(content().string(containsString("id=\"" + at + "-wrong\"")));
    }

    @Test
    void illuminanceAndPhotoperiodAreKeptWithTheirSources() throws Exception {
        Map<String, String> form = cells("2.9", "7.4", "0.29", "8");
        Map.of("BASKING-low", "20000", "BASKING-high", "90000", "SHADE-high", "5000", "CEILING-high", "120000")
                .forEach((cell, typed) -> form.put("cells[ILLUMINANCE-" + cell + "]", typed));
        for (LimitPlace place : LimitPlace.values()) {
            form.put("cells[ILLUMINANCE-" + place + "-mark]", "FROM_MEMORY");
            form.put("cells[ILLUMINANCE-" + place + "-source]", "the team's own");
        }
        for (int month = 1; month <= 12; month++) {
            form.put("hours[" + month + "]", month == 6 ? "14.5" : "12");
        }
        form.put("hoursMark", "COMMON_PRACTICE");
        form.put("hoursSource", "a subtropical year");
        approve(form).andExpect(redirectedUrl("/targets/" + species.id()));
        VersionDetails stored = newest();
        assertThat(stored.target().sourcedLimits()).hasSize(6);
        assertThat(stored.photoperiod().orElseThrow().hours()).contains(14.5, 12.0);
        see("/targets/" + species.id()).andExpect(content().string(containsString("a subtropical year")));
    }

    /**
     * At the equator every day has 12 h, and what the sun's radius of 16′ and a refraction of 34′ at the horizon add at both
     * ends: 2 · 50′ at 15° an hour are 0.11 h (worked by hand; both are usual values of almanacs).
     */
    @Test
    void hoursAreFilledInFromALatitude() throws Exception {
        String page = text(send(litAt("0", false)));
        for (int month = 1; month <= 12; month++) {
            assertThat(page).contains("name=\"hours[" + month + "]\" value=\"12.1\"");
        }
    }

    /** The longest days of the south are in December; half a year shifted they are in June. */
    @Test
    void aSouthernYearMayBeShifted() throws Exception {
        String hereJune = "name=\"hours[6]\" value=\"13.9\"";
        assertThat(text(send(litAt("-28", false)))).contains("name=\"hours[12]\" value=\"13.9\"");
        assertThat(text(send(litAt("-28", true)))).contains(hereJune);
    }

    @Test
    void filledInHoursSayThatTheyAreComputedFromTheSun() throws Exception {
        assertThat(text(send(litAt("-28", true))))
                .contains("value=\"Day length at latitude 28.0&deg;&nbsp;S, half a year shifted\"")
                .contains("<option value=\"COMPUTED\" selected=\"selected\">computed from the sun</option>");
    }

    @Test
    void fillingInKeepsWhatElseIsTypedAndStoresNothing() throws Exception {
        assertThat(text(send(litAt("-28", true))))
                .contains("watched for a season")
                .contains("value=\"2.9\"");
        assertThat(targets.versions(site.id(), species.id())).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "south", "1e400", "NaN", "90.1", "-91", "1.23456", "999999999999999"})
    void aLatitudeThatIsNoneIsAskedForAndComesBackAsTyped(String typed) throws Exception {
        Map<String, String> form = litAt(typed, false);
        form.put("hours[1]", "11.5");
        assertThat(text(send(form)))
                .contains("id=\"homeLatitude-wrong\"")
                .contains("name=\"homeLatitude\" value=\"" + typed + "\"")
                .contains("name=\"hours[1]\" value=\"11.5\"");
    }

    @Test
    void filledInHoursMayBeApproved() throws Exception {
        Map<String, String> form = cells("2.9", "7.4", "0.29", "8");
        Matcher typed = Pattern.compile("name=\"(hours\\[[0-9]+])\" value=\"([^\"]*)\"")
                .matcher(text(send(litAt("52", false))));
        while (typed.find()) {
            form.put(typed.group(1), typed.group(2));
        }
        form.put("hoursMark", "COMPUTED");
        form.put("hoursSource", "Day length at latitude 52.0° N");
        approve(form).andExpect(redirectedUrl("/targets/" + species.id()));
        see("/targets/" + species.id()).andExpect(content().string(containsString(">computed from the sun<")));
    }

    @Test
    void aFirstVersionMayCountForEarlierReadings() throws Exception {
        without();
        Map<String, String> form = cells("2.9", "7.4", "0.29", "8");
        form.put("seen", "0");
        form.put("earlier", "true");
        see(next).andExpect(content().string(containsString("Judge earlier readings too")));
        approve(form).andExpect(redirectedUrl("/targets/" + species.id()));
        assertThat(newest().target().isForEarlierReadings()).isTrue();
    }

    @Test
    void aFirstVersionCountsFromItsApprovalWhereNothingElseIsChosen() throws Exception {
        without();
        Map<String, String> form = cells("2.9", "7.4", "0.29", "8");
        form.put("seen", "0");
        approve(form).andExpect(redirectedUrl("/targets/" + species.id()));
        assertThat(newest().target().isForEarlierReadings()).isFalse();
    }

    @Test
    void aLaterVersionNeverCountsForEarlierReadings() throws Exception {
        see(next).andExpect(content().string(not(containsString("Judge earlier readings"))));
        Map<String, String> form = cells("3.0", "7.4", "0.3", "8");
        form.put("earlier", "true");
        approve(form).andExpect(redirectedUrl("/targets/" + species.id()));
        assertThat(newest().target().isForEarlierReadings()).isFalse();
    }

    private void without() {
        species = collection.species(site, "Laudakia stellio");
        next = "/targets/" + species.id() + "/next";
    }

    private VersionDetails newest() {
        return targets.newest(site.id(), species.id()).orElseThrow();
    }

    private Map<String, String> litAt(String latitude, boolean isShifted) {
        Map<String, String> form = cells("2.9", "7.4", "0.29", "8");
        form.put("sun", "true");
        form.put("homeLatitude", latitude);
        form.put("homeShifted", String.valueOf(isShifted));
        return form;
    }

    private Map<String, String> cells(String low, String high, String shade, String ceiling) {
        Map<String, String> form = new HashMap<>();
        form.put("seen", "1");
        form.put("shown", "");
        form.put("zone", "SUNBEAM-3");
        form.put("reason", "watched for a season");
        form.put("cells[UV_INDEX-BASKING-low]", low);
        form.put("cells[UV_INDEX-BASKING-high]", high);
        form.put("cells[UV_INDEX-SHADE-high]", shade);
        form.put("cells[UV_INDEX-CEILING-high]", ceiling);
        for (LimitPlace place : LimitPlace.values()) {
            form.put("cells[UV_INDEX-" + place + "-mark]", "FROM_MEMORY");
            form.put("cells[UV_INDEX-" + place + "-source]", "the team's own");
        }
        return form;
    }

    /** The form as the page of changes gives it back. */
    private Map<String, String> shown(Map<String, String> form) throws Exception {
        Matcher shown = SHOWN.matcher(text(send(form)));
        assertThat(shown.find()).isTrue();
        Map<String, String> again = new HashMap<>(form);
        again.put("shown", shown.group(1));
        return again;
    }

    private ResultActions approve(Map<String, String> form) throws Exception {
        return send(shown(form));
    }

    private static String text(ResultActions result) throws Exception {
        return result.andReturn().getResponse().getContentAsString();
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(supervisor)));
    }

    private ResultActions send(Map<String, String> form) throws Exception {
        MockHttpServletRequestBuilder request = post(next).with(csrf()).with(collection.as(supervisor));
        form.forEach(request::param);
        return pages.perform(request);
    }
}
