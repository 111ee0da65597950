package dapple.reading;

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
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class VisitCoverPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private VisitCovers covers;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private final UUID visit = UUID.randomUUID();
    private SiteFacts site;
    private SignedIn keeper;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
    }

    @Test
    void onePressSaysTheCoverWasOpen() throws Exception {
        say("OPEN").andExpect(redirectedUrl(path()));
        assertThat(covers.of(site.id(), visit)).map(VisitCoverFacts::cover).contains(CoverSaid.OPEN);
    }

    @Test
    void whatIsSaidLaterCounts() throws Exception {
        say("OPEN");
        say("CLOSED");
        assertThat(covers.of(site.id(), visit)).map(VisitCoverFacts::cover).contains(CoverSaid.CLOSED);
    }

    @Test
    void theSameTwiceIsKeptOnce() throws Exception {
        say("OPEN");
        say("OPEN");
        assertThat(database.queryForObject(
                        "select count(*) from visit_cover where site_id = ?", Integer.class, site.id()))
                .isEqualTo(1);
    }

    @Test
    void theHistoryOfReadingsSaysHowTheCoverWas() throws Exception {
        read();
        say("OPEN");
        history().andExpect(content().string(containsString("cover open")));
    }

    @Test
    void theHistorySaysNothingOfACoverThatNobodySpokeOf() throws Exception {
        read();
        history().andExpect(content().string(not(containsString("cover "))));
    }

    @Test
    void whatWasTakenBackIsNotSaid() throws Exception {
        read();
        say("OPEN");
        say("NOT_SAID");
        history().andExpect(content().string(not(containsString("cover open"))));
    }

    @Test
    void anEnclosureOfAnotherSiteIsNotFound() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.KEEPER);
        pages.perform(post(path() + "/cover")
                        .param("cover", "OPEN")
                        .with(csrf())
                        .with(collection.as(stranger)))
                .andExpect(status().isNotFound());
    }

    private void read() {
        VisitPlace place =
                new VisitPlace(visit, home.enclosureId(), home.basking().id());
        long meter = collection.meter(site).id();
        logging.log(Visitor.of(keeper), new Entry(UUID.randomUUID(), place, meter, 1.7, clock.instant()));
    }

    private ResultActions say(String cover) throws Exception {
        return pages.perform(
                post(path() + "/cover").param("cover", cover).with(csrf()).with(collection.as(keeper)));
    }

    private ResultActions history() throws Exception {
        return pages.perform(
                get("/enclosures/" + home.enclosureId() + "/readings").with(collection.as(keeper)));
    }

    private String path() {
        return "/enclosures/" + home.enclosureId() + "/visits/" + visit;
    }
}
