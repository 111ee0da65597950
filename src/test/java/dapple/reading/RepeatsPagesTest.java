package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.RepeatsAsked;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** Three readings one after the other, on the page of a visit. */
@PagesTest
class RepeatsPagesTest {
    private static final String SECOND = "Reading 2 of 3.";
    private static final String APART = "too far apart";

    @Autowired
    private TestCollection collection;

    @Autowired
    private Sites sites;

    @Autowired
    private MockMvc pages;

    @Autowired
    private JdbcTemplate database;

    private final UUID visit = UUID.randomUUID();
    private final UUID key = UUID.randomUUID();
    private SiteFacts site;
    private SignedIn keeper;
    private Home home;
    private long meter;

    @BeforeEach
    void furnish() {
        site = collection.site();
        ask(RepeatsAsked.BASKING);
        keeper = collection.person(site, Role.KEEPER);
        meter = collection.meter(site).id();
        home = collection.home(
                site, keeper, collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
    }

    @Test
    void afterTheFirstThePageAsksForTheSecond() throws Exception {
        type("3.1", List.of()).andExpect(status().isOk()).andExpect(content().string(containsString(SECOND)));
    }

    @Test
    void whatWasTypedIsCarriedUnseen() throws Exception {
        type("3.1", List.of())
                .andExpect(content().string(containsString("<input type=\"hidden\" name=\"repeat\" value=\"3.1\">")))
                .andExpect(content().string(not(containsString("<input type=\"text\" value=\"3.1\""))));
    }

    @Test
    void nothingIsStoredBeforeTheThird() throws Exception {
        type("3.1", List.of());
        assertThat(amounts()).isEmpty();
    }

    @Test
    void theMiddleOneIsStored() throws Exception {
        type("3.3", List.of("3.1", "3.2")).andExpect(redirectedUrlPattern("/readings/*"));
        assertThat(amounts()).containsExactly(3.2);
    }

    @Test
    void threeThatAreTooFarApartAreAskedForAgain() throws Exception {
        type("4.0", List.of("3.0", "2.0"))
                .andExpect(content().string(containsString(APART)))
                .andExpect(content().string(containsString("Reading 1 of 3.")));
        assertThat(amounts()).isEmpty();
    }

    @Test
    void theSecondThreeCountHoweverFarApart() throws Exception {
        type("5.0", List.of("3.0", "2.0", "4.0", "3.0", "2.5")).andExpect(redirectedUrlPattern("/readings/*"));
        assertThat(amounts()).containsExactly(3.0);
    }

    @Test
    void theHistoryShowsAllThatWasTyped() throws Exception {
        type("3.3", List.of("3", "2", "4", "3.1", "3.2"));
        pages.perform(get("/enclosures/{id}/readings", home.enclosureId()).with(collection.as(keeper)))
                .andExpect(content().string(containsString("first read 3, 2, 4: too far apart")))
                .andExpect(content().string(containsString("middle one of 3.1, 3.2, 3.3")));
    }

    /** The ceiling is 8: nobody stays there for another reading. */
    @Test
    void overTheCeilingTheLastCountsAtOnce() throws Exception {
        type("9.1", List.of("3.1")).andExpect(redirectedUrlPattern("/readings/*"));
        assertThat(amounts()).containsExactly(9.1);
    }

    @Test
    void aSlipInTheMiddleLosesNothing() throws Exception {
        type("abc", List.of("3.1"))
                .andExpect(content().string(containsString("value=\"abc\"")))
                .andExpect(content().string(containsString("name=\"repeat\" value=\"3.1\"")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"abc", "NaN", "1e400", "-1", "100"})
    void whatNoPageCarriesIsAsIfNothingHadBeenTyped(String carried) throws Exception {
        type("3.1", List.of(carried, "3.0")).andExpect(content().string(containsString(SECOND)));
    }

    @Test
    void postedTwiceItIsStoredOnce() throws Exception {
        type("3.3", List.of("3.1", "3.2"));
        type("3.3", List.of("3.1", "3.2")).andExpect(redirectedUrlPattern("/readings/*"));
        assertThat(amounts()).containsExactly(3.2);
    }

    @Test
    void whereNothingIsAskedOneIsEnough() throws Exception {
        ask(RepeatsAsked.NOWHERE);
        type("3.1", List.of()).andExpect(redirectedUrlPattern("/readings/*"));
        assertThat(database.queryForObject(
                        "select count(*) from reading_repeat where site_id = ?", Integer.class, site.id()))
                .isZero();
    }

    @Test
    void whereNothingIsAskedThePageSaysNothingOfIt() throws Exception {
        ask(RepeatsAsked.NOWHERE);
        pages.perform(get(path()).with(collection.as(keeper)))
                .andExpect(content().string(not(containsString("Reading 1 of 3."))));
    }

    private void ask(RepeatsAsked where) {
        sites.settle(site.id(), sites.settingsVersion(site.id()), Settings.USUAL.withRepeatsAsked(where));
    }

    private ResultActions type(String amount, List<String> before) throws Exception {
        MockHttpServletRequestBuilder request = post(path())
                .param("key", key.toString())
                .param("meterId", String.valueOf(meter))
                .param("amount", amount)
                .with(csrf())
                .with(collection.as(keeper));
        before.forEach(one -> request.param("repeat", one));
        return pages.perform(request);
    }

    private List<Double> amounts() {
        return database.queryForList("select amount from reading where entry_key = ?", Double.class, key);
    }

    private String path() {
        return "/enclosures/" + home.enclosureId() + "/visits/" + visit + "/points/"
                + home.basking().id();
    }
}
