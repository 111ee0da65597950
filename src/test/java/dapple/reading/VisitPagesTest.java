package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class VisitPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private MockMvc pages;

    private final String visit = UUID.randomUUID().toString();
    private SignedIn keeper;
    private MeterFacts meter;
    private Home home;

    @BeforeEach
    void furnish() {
        SiteFacts site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        meter = collection.meter(site);
        home = collection.home(
                site, keeper, collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
    }

    @Test
    void aVisitBeginsAtItsFirstPoint() throws Exception {
        pages.perform(get("/enclosures/{id}/visit", home.enclosureId()).with(collection.as(keeper)))
                .andExpect(redirectedUrlPattern("/enclosures/" + home.enclosureId() + "/visits/*/points/"
                        + home.basking().id()));
    }

    @Test
    void withoutAMeterWhoMayIsLedToOneAndOthersAreToldWhom() throws Exception {
        SiteFacts bare = collection.site();
        SignedIn visitor = collection.person(bare, Role.KEEPER);
        Home there = collection.home(bare, visitor, collection.species(bare, "Pogona vitticeps"));
        String path = "/enclosures/" + there.enclosureId() + "/visits/" + visit + "/points/"
                + there.basking().id();

        pages.perform(get(path).with(collection.as(visitor)))
                .andExpect(content().string(containsString("to register one.")))
                .andExpect(content().string(not(containsString("href=\"/meters\">Register a meter"))));
        pages.perform(get(path).with(collection.as(collection.person(bare, Role.KEEPER, Role.SUPERVISOR))))
                .andExpect(content().string(containsString("href=\"/meters\">Register a meter")));
    }

    @Test
    void withoutAPointWhoMayIsLedToOneAndOthersAreToldWhom() throws Exception {
        SiteFacts bare = collection.site();
        long enclosure = collection.emptyEnclosure(bare);
        String path = "/enclosures/" + enclosure + "/visits/" + visit;

        pages.perform(get(path).with(collection.as(collection.person(bare, Role.KEEPER))))
                .andExpect(content().string(containsString("This enclosure has no measuring points yet.")))
                .andExpect(content().string(containsString("an administrator can add one.")))
                .andExpect(content().string(not(containsString("/points/new"))));
        pages.perform(get(path).with(collection.as(collection.person(bare, Role.KEEPER, Role.SUPERVISOR))))
                .andExpect(content().string(containsString("href=\"/enclosures/" + enclosure + "/points/new\"")));
    }

    @Test
    void aMeterThatWasNeverCalibratedIsNotSaidToBe() throws Exception {
        reply("3.4")
                .andExpect(content().string(containsString("it has no calibration")))
                .andExpect(content().string(not(containsString("after its calibration"))));
    }

    /** 1.74 is shown as 1.7, and 2.9 − 1.7 = 1.2 is 41 % of 2.9 [baines2016]; unrounded it would be 1.16, 40 %. */
    @Test
    void theFiguresOfASentenceAgree() throws Exception {
        reply("1.74").andExpect(content().string(containsString("Target 2.9 to 7.4: short by 1.2 (41\u00a0%).")));
    }

    @Test
    void theLastValueIsHiddenUntilEntry() throws Exception {
        log("6.66");
        pages.perform(get(point()).with(collection.as(keeper)))
                .andExpect(content().string(not(containsString("6.66"))))
                .andExpect(content().string(not(containsString("6.7"))));
    }

    @Test
    void theReplySaysStateValueAndTarget() throws Exception {
        reply("1.7")
                .andExpect(content().string(containsString("too weak")))
                .andExpect(content().string(containsString("Target 2.9 to 7.4: short by 1.2 (41\u00a0%).")));
    }

    @Test
    void theHistorySaysThatAGradientPointWaitsForBaskingAndShade() throws Exception {
        pages.perform(post(path() + "/points/" + home.gradient().id())
                .param("key", UUID.randomUUID().toString())
                .param("meterId", String.valueOf(meter.id()))
                .param("quantity", "UV_INDEX")
                .param("amount", "1.7")
                .with(csrf())
                .with(collection.as(keeper)));
        pages.perform(get("/enclosures/{id}/readings", home.enclosureId()).with(collection.as(keeper)))
                .andExpect(
                        content().string(containsString("judged once basking and shade are read in the same visit")));
    }

    @Test
    void aCommaIsADecimalPoint() throws Exception {
        log("3,4").andExpect(redirectedUrlPattern("/readings/*"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"abc", "", "1e400", "NaN", "-1", "100", "Infinity", "3.456", "0x10", "3 4", "3.4.5"})
    void whatIsNoReadingComesBackAsTypedWithAMessage(String typed) throws Exception {
        log(typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"" + typed + "\"")))
                .andExpect(content().string(containsString("Enter the UV index from 0 to 99.9, for example 3.0")));
    }

    @Test
    void whatIsNoReadingIsNotStored() throws Exception {
        int before = readings();
        log("abc");
        assertThat(readings()).isEqualTo(before);
    }

    @Test
    void aDoublePostIsStoredOnce() throws Exception {
        String key = UUID.randomUUID().toString();
        String first = Optional.ofNullable(
                        log(key, "3.4").andReturn().getResponse().getRedirectedUrl())
                .orElseThrow();
        log(key, "3.4").andExpect(redirectedUrl(first));
    }

    @Test
    void aReasonInsteadOfANumberLeadsToTheNextPoint() throws Exception {
        pages.perform(post(point() + "/unread")
                        .param("key", UUID.randomUUID().toString())
                        .param("outcome", "ANIMAL_IN_THE_WAY")
                        .with(csrf())
                        .with(collection.as(keeper)))
                .andExpect(redirectedUrl(path() + "/points/" + home.gradient().id()));
    }

    @Test
    void aReadingOverTheCeilingStopsTheRoundWithItsCautions() throws Exception {
        String reply = Optional.ofNullable(log("9.1").andReturn().getResponse().getRedirectedUrl())
                .orElseThrow();
        pages.perform(get(reply).with(collection.as(keeper)))
                .andExpect(content().string(containsString("Stop: over the ceiling")))
                .andExpect(content().string(containsString("data-caution=\"HEAT\"")))
                .andExpect(content().string(containsString("data-caution=\"MAINS\"")))
                .andExpect(content().string(containsString("data-caution=\"VET\"")));
    }

    @Test
    void aCorrectionWantsAReason() throws Exception {
        String reply = Optional.ofNullable(log("28").andReturn().getResponse().getRedirectedUrl())
                .orElseThrow();
        pages.perform(post(reply + "/correction")
                        .param("key", UUID.randomUUID().toString())
                        .param("amount", "2.8")
                        .param("reason", " ")
                        .with(csrf())
                        .with(collection.as(keeper)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"2.8\"")))
                .andExpect(content().string(containsString("Enter something here, on one line.")));
    }

    @Test
    void aVisitThatWasBegunFromAWalkLeadsBackToIt() throws Exception {
        MockHttpServletResponse begun = pages.perform(get("/enclosures/{id}/visit", home.enclosureId())
                        .param("plan", "7")
                        .param("due", "2026-11-23")
                        .with(collection.as(keeper)))
                .andReturn()
                .getResponse();
        String first = Optional.ofNullable(begun.getRedirectedUrl()).orElseThrow();
        String end = first.substring(0, first.indexOf("/points/"));
        pages.perform(get(end).cookie(begun.getCookies()).with(collection.as(keeper)))
                .andExpect(content().string(containsString("href=\"/rounds/7/walks/2026-11-23\"")));
    }

    @Test
    void anotherVisitLeadsToTodayAlone() throws Exception {
        pages.perform(get(path()).with(collection.as(keeper)))
                .andExpect(content().string(not(containsString("Back to the walk"))));
    }

    @ParameterizedTest
    @CsvSource({"seven, 2026-11-23", "7, yesterday", "//elsewhere.example, 2026-11-23"})
    void aWalkThatIsNoneBeginsNoVisit(String plan, String due) throws Exception {
        pages.perform(get("/enclosures/{id}/visit", home.enclosureId())
                        .param("plan", plan)
                        .param("due", due)
                        .with(collection.as(keeper)))
                .andExpect(status().isBadRequest());
    }

    private ResultActions log(String typed) throws Exception {
        return log(UUID.randomUUID().toString(), typed);
    }

    private ResultActions log(String key, String typed) throws Exception {
        return pages.perform(post(point())
                .param("key", key)
                .param("meterId", String.valueOf(meter.id()))
                .param("amount", typed)
                .with(csrf())
                .with(collection.as(keeper)));
    }

    private ResultActions reply(String typed) throws Exception {
        String address = Optional.ofNullable(
                        log(typed).andReturn().getResponse().getRedirectedUrl())
                .orElseThrow();
        return pages.perform(get(address).with(collection.as(keeper)));
    }

    private String path() {
        return "/enclosures/" + home.enclosureId() + "/visits/" + visit;
    }

    private String point() {
        return path() + "/points/" + home.basking().id();
    }

    private int readings() {
        Integer count = database.queryForObject("select count(*) from reading", Integer.class);
        return count == null ? 0 : count;
    }
}
