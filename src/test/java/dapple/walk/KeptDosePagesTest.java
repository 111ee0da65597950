package dapple.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
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
import dapple.site.RepeatsAsked;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import tools.jackson.databind.json.JsonMapper;

/** What fell on the reader, kept for that person alone and only where the site has settled so. */
@PagesTest
class KeptDosePagesTest {
    private static final Settings KEEPING =
            new Settings(9, 21, 14, 28, 30, 0.8, 1.25, 14, 3, false, true, RepeatsAsked.NOWHERE, false, 24);

    @Autowired
    private TestCollection collection;

    @Autowired
    private Sites sites;

    @Autowired
    private MockMvc pages;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private JsonMapper json;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private Home home;

    @BeforeEach
    void makeAHome() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
    }

    /** 3.1 UVI for 2 minutes; without spectrum 30 J/m² are reached after 0.6 UVI h, 36 UVI min: 6.2/36 is 17 %. */
    @Test
    void aDoseIsKeptByTheRuleOfThumb() throws Exception {
        keep();
        send(UUID.randomUUID(), 120.0).andExpect(status().isOk());
        dose(keeper)
                .andExpect(
                        content().string(allOf(containsString("Today: 17\u00a0% of the limit"), containsString("6.2"))))
                .andExpect(content().string(containsString("5.17")));
    }

    @Test
    void itIsKeptOnceHoweverOftenItIsSent() throws Exception {
        keep();
        UUID key = UUID.randomUUID();
        send(key, 120.0);
        send(key, 120.0).andExpect(status().isOk());
        assertThat(kept()).isEqualTo(1);
    }

    @Test
    void nothingIsKeptWhereTheSiteHasNotSettledSo() throws Exception {
        send(UUID.randomUUID(), 120.0).andExpect(status().isOk());
        assertThat(kept()).isZero();
        dose(keeper).andExpect(content().string(containsString("Your site does not keep this")));
    }

    /** As on the phone: longer at a point the phone was put away. */
    @ParameterizedTest
    @CsvSource({"-5, 0", "601, 31", "1e300, 31"})
    void timesThatCannotBeAreBounded(double seconds, double uvIndexMinutes) throws Exception {
        keep();
        send(UUID.randomUUID(), seconds).andExpect(status().isOk());
        assertThat(database.queryForObject(
                        "select uv_index_minutes from kept_dose where person_id = ?", Double.class, keeper.personId()))
                .isEqualTo(uvIndexMinutes);
    }

    @Test
    void nobodyElseIsShownIt() throws Exception {
        keep();
        send(UUID.randomUUID(), 120.0);
        for (Role role : Role.values()) {
            dose(collection.person(site, role)).andExpect(content().string(not(containsString("5.17"))));
        }
    }

    @Test
    void onesOwnAreErasedAndNobodyElses() throws Exception {
        keep();
        send(UUID.randomUUID(), 120.0);
        SignedIn other = collection.person(site, Role.KEEPER);
        erase(other);
        assertThat(kept()).isEqualTo(1);
        erase(keeper);
        assertThat(kept()).isZero();
    }

    private void keep() {
        sites.settle(site.id(), 0, KEEPING);
    }

    private void erase(SignedIn person) throws Exception {
        pages.perform(post("/account/dose/erase").with(collection.as(person)).with(csrf()))
                .andExpect(redirectedUrl("/account/dose?erased"));
    }

    private ResultActions dose(SignedIn person) throws Exception {
        return pages.perform(get("/account/dose").with(collection.as(person))).andExpect(status().isOk());
    }

    private int kept() {
        Integer count = database.queryForObject(
                "select count(*) from kept_dose where person_id = ?", Integer.class, keeper.personId());
        return count == null ? 0 : count;
    }

    private ResultActions send(UUID key, double secondsAtPoint) throws Exception {
        Instant now = clock.instant();
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("key", key);
        entry.put("visitKey", UUID.randomUUID());
        entry.put("personId", keeper.personId());
        entry.put("enclosureId", home.enclosureId());
        entry.put("pointId", home.basking().id());
        entry.put("quantity", "UV_INDEX");
        entry.put("meterId", collection.meter(site).id());
        entry.put("amount", 3.1);
        entry.put("takenAt", now.toString());
        entry.put("sentAt", now.toString());
        entry.put("secondsAtPoint", secondsAtPoint);
        return pages.perform(post("/walk/entries")
                .with(collection.as(keeper))
                .with(csrf())
                .contentType(MediaType.APPLICATION_JSON)
                .content(json.writeValueAsString(entry)));
    }
}
