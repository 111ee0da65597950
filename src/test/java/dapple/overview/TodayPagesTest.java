package dapple.overview;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;

import dapple.animal.Animals;
import dapple.animal.Arrival;
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
import java.util.List;
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
    private Animals animals;

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
    void whereNobodyLivesTodayAndReviewLeadToTheAnimals() throws Exception {
        collection.emptyEnclosure(site);
        Matcher<String> lead = containsString("href=\"/animals/new\">Enter an animal or a group");
        for (String path : List.of("/", "/review")) {
            see(path, collection.person(site, Role.KEEPER), lead);
            see(path, collection.person(site, Role.INSPECTOR), allOf(not(lead), containsString("can enter them")));
        }
    }

    @Test
    void withoutATargetTodayAndReviewLeadToTheSuggestions() throws Exception {
        SignedIn keeper = collection.person(site, Role.KEEPER);
        SignedIn supervisor = collection.person(site, Role.SUPERVISOR);
        Home home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
        read(keeper, home);
        Matcher<String> lead = containsString("href=\"/targets/confirmation\">Confirm suggestions");
        for (String path : List.of("/", "/review")) {
            see(path, supervisor, allOf(lead, containsString("In one enclosure something was read for a species")));
            see(path, keeper, allOf(not(lead), containsString("A supervisor or a vet can confirm")));
        }
    }

    @Test
    void anEnclosureWithoutPointsLeadsToTheFirst() throws Exception {
        SignedIn keeper = collection.person(site, Role.KEEPER);
        Home home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
        long bare = collection.emptyEnclosure(site);
        animals.move(site.id(), new Arrival(home.animal().id(), bare, clock.instant(), keeper.personId()));
        Matcher<String> lead = containsString("href=\"/enclosures/" + bare + "/points/new\"");
        for (String path : List.of("/review", "/enclosures/" + bare)) {
            see(path, collection.person(site, Role.KEEPER, Role.SUPERVISOR), lead);
            see(path, keeper, allOf(not(lead), containsString("This enclosure has no measuring points yet.")));
            see(path, keeper, containsString("an administrator can add one"));
        }
    }

    @Test
    void theFirstReadingEndsTheBeginning() throws Exception {
        SignedIn keeper = collection.person(site, Role.KEEPER, Role.SUPERVISOR);
        Home home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
        see(keeper, containsString("To begin"));
        read(keeper, home);
        see(keeper, not(containsString("To begin")));
    }

    private void read(SignedIn keeper, Home home) {
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
    }

    private void see(SignedIn who, Matcher<String> what) throws Exception {
        see("/", who, what);
    }

    private void see(String path, SignedIn who, Matcher<String> what) throws Exception {
        pages.perform(get(path).with(collection.as(who))).andExpect(content().string(what));
    }
}
