package dapple.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.PointFacts;
import dapple.order.NewOrder;
import dapple.order.Ordered;
import dapple.order.Ordering;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class FindingPagesTest {
    private static final double WEAK = 1.7;
    private static final double OVER_CEILING = 9.1;

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Ordering ordering;

    @Autowired
    private Sites sites;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private SignedIn supervisor;
    private Home home;
    private String page;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        supervisor = collection.person(site, Role.SUPERVISOR);
        home = collection.home(
                site,
                supervisor,
                collection.species(site, supervisor, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
        page = "/review/" + home.enclosureId();
        read(keeper, home.basking(), WEAK);
        read(keeper, home.gradient(), 1.0);
        read(keeper, home.shade(), 0);
        read(keeper, home.nearest(), 2.0);
    }

    @Test
    void whatIsAcceptedLeavesTheDeskUntilItsDay() throws Exception {
        decide(supervisor, "ACCEPTED").andExpect(redirectedUrl(page));
        see(supervisor, "/review").andExpect(content().string(containsString("1 accepted for a while")));
    }

    @Test
    void whatIsAcceptedComesBackWhenItGetsWorse() throws Exception {
        decide(supervisor, "ACCEPTED");
        read(keeper, home.basking(), OVER_CEILING);
        see(supervisor, "/review").andExpect(content().string(containsString("1 waiting, 0 accepted for a while")));
    }

    @Test
    void whoTookTheReadingDoesNotAcceptIt() throws Exception {
        read(supervisor, home.basking(), WEAK);
        decide(supervisor, "ACCEPTED")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("You took the reading")));
    }

    @Test
    void atASiteOfOnePersonItIsMarked() throws Exception {
        sites.settle(site.id(), 0, Settings.USUAL.withOnePerson());
        read(supervisor, home.basking(), WEAK);
        decide(supervisor, "ACCEPTED").andExpect(redirectedUrl(page));
        see(supervisor, page)
                .andExpect(content().string(containsString("accepted by the person who took the reading")));
    }

    @Test
    void overTheCeilingIsNotAccepted() throws Exception {
        read(keeper, home.basking(), OVER_CEILING);
        decide(supervisor, "ACCEPTED").andExpect(content().string(containsString("Over the ceiling is not accepted")));
    }

    @Test
    void whoDecidesSeesWhatWasReadAndWhen() throws Exception {
        see(supervisor, page)
                .andExpect(content().string(containsString("<b>1.7</b>")))
                .andExpect(content().string(containsString("P1, basking")))
                .andExpect(content().string(containsString("class=\"gauge\"")))
                .andExpect(content().string(containsString("Last change of the rig")));
    }

    @Test
    void aKeeperDoesNotDecide() throws Exception {
        decide(keeper, "NOTE").andExpect(status().isForbidden());
    }

    @Test
    void aDoublePostIsStoredOnce() throws Exception {
        String key = UUID.randomUUID().toString();
        decide(supervisor, "NOTE", "key", key, "text", "only once please");
        decide(supervisor, "NOTE", "key", key, "text", "only once please").andExpect(redirectedUrl(page));
        String shown = see(supervisor, page).andReturn().getResponse().getContentAsString();
        assertThat(shown.split("only once please", -1)).hasSize(3); // Once in the finding, once in the record.
    }

    @Test
    void somebodyElseSeesToItUntilADay() throws Exception {
        decide(supervisor, "GIVEN", "givenTo", String.valueOf(keeper.personId()));
        see(supervisor, "/review").andExpect(content().string(containsString("given to " + keeper.fullName())));
    }

    @Test
    void whatWasReadBeforeAnOrderSaysNothingOfIt() throws Exception {
        order(new Ordered.UvOff());
        see(supervisor, page)
                .andExpect(content().string(containsString("vet’s order not read yet")))
                .andExpect(content().string(containsString("Not read since a vet’s order came into force")));
    }

    @Test
    void itIsToBeReadAtOnce() throws Exception {
        order(new Ordered.Cap(4));
        see(supervisor, "/enclosures/" + home.enclosureId())
                .andExpect(content().string(containsString("Set the light as ordered, then read it.")));
    }

    @Test
    void readUnderTheOrderItIsJudgedByIt() throws Exception {
        order(new Ordered.UvOff());
        for (PointFacts point : List.of(home.basking(), home.gradient(), home.shade(), home.nearest())) {
            read(keeper, point, 0);
        }
        see(supervisor, page).andExpect(content().string(not(containsString("vet’s order not read yet"))));
    }

    @Test
    void overTheCeilingStaysSoUnderANewOrder() throws Exception {
        read(keeper, home.basking(), OVER_CEILING);
        order(new Ordered.UvOff());
        see(supervisor, page).andExpect(content().string(containsString("over the ceiling")));
    }

    private void order(Ordered ordered) {
        LocalDate week = LocalDate.ofInstant(clock.instant(), site.timeZone()).plusDays(7);
        ordering.place(
                site.id(),
                new NewOrder(
                        home.animal().id(),
                        ordered,
                        "eyes shut",
                        Optional.empty(),
                        week,
                        UUID.randomUUID(),
                        supervisor.personId()));
    }

    @Test
    void aPersonOfAnotherSiteIsNotFound() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.KEEPER);
        decide(supervisor, "GIVEN", "givenTo", String.valueOf(stranger.personId()))
                .andExpect(status().isNotFound());
    }

    @Test
    void anEnclosureOfAnotherSiteIsNotFound() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        see(stranger, page).andExpect(status().isNotFound());
    }

    @Test
    void aSecondReadingIsAskedForUntilThePointIsReadAgain() throws Exception {
        decide(supervisor, "SECOND_READING", "text", "check the mesh");
        see(supervisor, "/review").andExpect(content().string(containsString("second reading asked for")));
        read(keeper, home.basking(), WEAK);
        see(supervisor, "/review").andExpect(content().string(not(containsString("second reading asked for"))));
    }

    @ParameterizedTest
    @CsvSource({
        "ACCEPTED, '', 'Enter the last day'",
        "ACCEPTED, 2020-01-01, 'Enter today or a later day.'",
        "ACCEPTED, 2099-01-01, 'Enter a day within a year.'",
        "ACCEPTED, soon, 'Enter a day, for example'",
        "GIVEN, '', 'Enter the last day'"
    })
    void aWrongDayComesBackAsTyped(String kind, String until, String message) throws Exception {
        decide(supervisor, kind, "until", until, "givenTo", String.valueOf(keeper.personId()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)))
                .andExpect(content().string(containsString("because it may")));
    }

    @Test
    void aReasonIsNeeded() throws Exception {
        decide(supervisor, "ACCEPTED", "text", " ").andExpect(content().string(containsString("text-wrong")));
    }

    private ResultActions see(SignedIn person, String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(person)));
    }

    private ResultActions decide(SignedIn person, String kind, String... changed) throws Exception {
        Map<String, String> typed = new HashMap<>(Map.of(
                "key",
                UUID.randomUUID().toString(),
                "kind",
                kind,
                "text",
                "because it may",
                "until",
                LocalDate.now(clock.withZone(site.timeZone())).plusDays(7).toString()));
        for (int at = 0; at < changed.length; at += 2) {
            typed.put(changed[at], changed[at + 1]);
        }
        var request = post(page).with(csrf()).with(collection.as(person));
        typed.forEach(request::param);
        return pages.perform(request);
    }

    private void read(SignedIn reader, PointFacts point, double uvi) {
        VisitPlace place = new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id());
        logging.log(
                new Visitor(site.id(), reader.personId()),
                new Entry(UUID.randomUUID(), place, meter(), uvi, clock.instant()));
    }

    private long meter() {
        return collection.meter(site).id();
    }
}
