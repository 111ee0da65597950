package dapple.agreement;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** What the readings say of meters, on their pages and wherever somebody must know of it. */
@PagesTest
class AgreementPagesTest {
    private static final double TENTH_LESS = Math.log(0.9);

    /** 10 % less; the intervals of the telling are ± 0.02 in ln: 8.2 to 11.8 %. */
    private static final String WORDS = "−10.0\u00a0% (−11.8 to −8.2\u00a0%, 95\u00a0%)";

    @Autowired
    private TestCollection collection;

    @Autowired
    private Tellings tellings;

    @Autowired
    private MeterFindings findings;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;
    private Asking asking;
    private MeterFacts meter;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        asking = new Asking(pages, collection.as(supervisor));
        meter = collection.meter(site);
    }

    @Test
    void beforeTheFirstComputationItSaysSo() throws Exception {
        asking.see("/meters/agreement").andExpect(content().string(containsString("Nothing has been compared yet.")));
    }

    @Test
    void aSteadyMeterHasItsInterval() throws Exception {
        tellings.nothing(site, meter);
        asking.see("/meters/agreement")
                .andExpect(content()
                        .string(allOf(
                                containsString("between −1.0 and +3.0 % a year"),
                                containsString("Nothing speaks against a meter."))));
    }

    @Test
    void ofOneMeterAloneItSaysWhatCannotBeTold() throws Exception {
        tellings.nothing(site, meter);
        asking.see("/meters/agreement").andExpect(content().string(containsString("Only one meter is read here.")));
    }

    @Test
    void howOftenItIsWrongStandsThere() throws Exception {
        asking.see("/meters/agreement")
                .andExpect(content().string(containsString("in 3 of 100 simulated collections")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/meters/agreement", "/review"})
    void aFindingStandsWithItsSize(String page) throws Exception {
        tellings.knocked(site, meter, TENTH_LESS);
        asking.see(page)
                .andExpect(
                        content().string(allOf(containsString(meter.code() + " reads less"), containsString(WORDS))));
    }

    @Test
    void aMetersPageHasItsWeeksAsDrawingAndTable() throws Exception {
        tellings.knocked(site, meter, TENTH_LESS);
        asking.see("/meters/" + meter.id() + "/agreement")
                .andExpect(content()
                        .string(allOf(
                                containsString("<td class=\"num\">−9.5 %</td>"), containsString("role=\"img\""))));
    }

    @Test
    void aDoubtNamesTheOtherMeterAndTheLamps() throws Exception {
        MeterFacts other = collection.meter(site);
        tellings.driftingMaybe(site, meter, other, -0.1);
        asking.see("/meters/agreement")
                .andExpect(content()
                        .string(allOf(
                                containsString("Or " + other.code() + " has changed the other way"),
                                containsString("Or all lamps have changed at once"),
                                containsString(meter.code() + " over " + other.code()))));
    }

    @Test
    void todayNamesTheMeterOnce() throws Exception {
        tellings.knocked(site, meter, TENTH_LESS);
        asking.see("/").andExpect(content().string(containsString("/meters/" + meter.id() + "/agreement")));
    }

    @Test
    void whoReadsIsTold() throws Exception {
        Home home = collection.home(site, supervisor, collection.species(site, "Pogona vitticeps"));
        tellings.knocked(site, meter, TENTH_LESS);
        asking.see("/enclosures/" + home.enclosureId() + "/visits/" + UUID.randomUUID() + "/points/"
                        + home.basking().id())
                .andExpect(content().string(containsString("seems to read 10 % low since")));
    }

    @Test
    void thePhonesSheetCarriesTheSame() throws Exception {
        Home home = collection.home(site, supervisor, collection.species(site, "Pogona vitticeps"));
        tellings.knocked(site, meter, TENTH_LESS);
        asking.see("/enclosures/" + home.enclosureId() + "/on-phone")
                .andExpect(content().string(containsString("seems to read 10 % low since")));
    }

    @Test
    void aFindingIsSettledWithAReason() throws Exception {
        String page = finding();
        asking.send(page, Map.of("reason", "compared at ten points: it is right"))
                .andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content()
                        .string(allOf(
                                containsString(supervisor.fullName() + ": compared at ten points"),
                                not(containsString("What to do")))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "a\u0007b"})
    void withoutAReasonItIsNotSettled(String reason) throws Exception {
        String page = finding();
        asking.send(page, Map.of("reason", reason))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("aria-describedby=\"reason-wrong\"")));
    }

    @Test
    void whoComesSecondSeesHowItWasSettledAndKeepsTheirWords() throws Exception {
        String page = finding();
        asking.send(page, Map.of("reason", "the first"));
        asking.send(page, Map.of("reason", "the second"))
                .andExpect(status().isConflict())
                .andExpect(content().string(allOf(containsString("the first"), containsString("the second"))));
    }

    @ParameterizedTest
    @EnumSource
    void everyRoleSeesItAndTwoSettleIt(Role role) throws Exception {
        String page = finding();
        Asking somebody = new Asking(pages, collection.as(collection.person(site, role)));
        somebody.see(page).andExpect(status().isOk());
        somebody.send(page, Map.of("reason", "seen to"))
                .andExpect(
                        role == Role.SUPERVISOR || role == Role.LIGHTING_LEAD
                                ? redirectedUrl(page)
                                : status().isForbidden());
    }

    @Test
    void anotherSitesFindingAndMeterAreNotFound() throws Exception {
        String page = finding();
        SignedIn elsewhere = collection.person(collection.site(), Role.SUPERVISOR);
        Asking stranger = new Asking(pages, collection.as(elsewhere));
        stranger.see(page).andExpect(status().isNotFound());
        stranger.send(page, Map.of("reason", "not mine")).andExpect(status().isNotFound());
        stranger.see("/meters/" + meter.id() + "/agreement").andExpect(status().isNotFound());
    }

    private String finding() {
        tellings.knocked(site, meter, TENTH_LESS);
        return "/meters/agreement/" + findings.open(site.id()).get(0).id();
    }
}
