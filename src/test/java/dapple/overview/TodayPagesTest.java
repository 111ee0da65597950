package dapple.overview;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
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

@PagesTest
class TodayPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;

    @BeforeEach
    void furnish() {
        site = collection.site();
    }

    @Test
    void anEmptySiteSaysHowToBegin() throws Exception {
        see(collection.person(site, Role.ADMINISTRATOR), containsString("href=\"/rooms\">Rooms, their enclosures"));
    }

    @Test
    void anEmptySiteOffersToImportWhatWasKeptBefore() throws Exception {
        see(
                collection.person(site, Role.ADMINISTRATOR),
                containsString("href=\"/records/import\">A spreadsheet, if you have kept one"));
        see(collection.person(site, Role.KEEPER), not(containsString("href=\"/records/import\">A spreadsheet")));
    }

    @Test
    void whatAnotherRoleDoesIsNoLink() throws Exception {
        see(
                collection.person(site, Role.ADMINISTRATOR),
                allOf(
                        containsString("confirm the suggestions"),
                        not(containsString("href=\"/targets/confirmation\""))));
    }

    @Test
    void theFirstReadingEndsTheBeginning() throws Exception {
        SignedIn keeper = collection.person(site, Role.KEEPER, Role.SUPERVISOR);
        Home home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
        see(keeper, containsString("To begin"));
        logging.log(
                new Visitor(site.id(), keeper.personId()),
                new Entry(
                        UUID.randomUUID(),
                        new VisitPlace(
                                UUID.randomUUID(),
                                home.enclosureId(),
                                home.basking().id()),
                        collection.meter(site).id(),
                        2.0,
                        clock.instant()));
        see(keeper, not(containsString("To begin")));
    }

    private void see(SignedIn who, Matcher<String> what) throws Exception {
        pages.perform(get("/").with(collection.as(who))).andExpect(content().string(what));
    }
}
