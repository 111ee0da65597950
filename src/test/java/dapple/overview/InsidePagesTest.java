package dapple.overview;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import dapple.order.NewOrder;
import dapple.order.Ordered;
import dapple.order.Ordering;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The parts of an enclosure's page: lamps, residents, the course of the UV index, and the page that links them. */
@PagesTest
class InsidePagesTest {
    private static final String CHANGED = "Not read at every point since the rig changed: first set up";
    private static final String READ_AGAIN = "Read again, the rig has changed";

    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Ordering ordering;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER, Role.SUPERVISOR);
        SpeciesFacts skink = collection.species(site, keeper, "Tiliqua scincoides", new UvZone(2, LightMethod.SUNBEAM));
        home = homes.lit(site, keeper, skink);
    }

    @Test
    void lampsShowSinceWhenTheyHangAndHowLongTheyBurn() throws Exception {
        see(
                "/lamps",
                allOf(containsString("2 days"), containsString("20 h by its timer"), containsString("08:00 to 18:00")));
    }

    @Test
    void aLampThatWasNeverReadIsInCommissioning() throws Exception {
        see("/lamps", containsString("commissioning: not read yet"));
    }

    @Test
    void aLampWithoutSpectrumIsNamedWithItsCautions() throws Exception {
        see(
                "/lamps",
                allOf(containsString("no spectrum or report is on file"), containsString("data-caution=\"SPECTRUM\"")));
    }

    @Test
    void coverAndFurnitureStandBeside() throws Exception {
        see(
                "/lamps",
                allOf(
                        containsString("lid mesh"),
                        containsString("with and without, one meter"),
                        containsString("slab, animals rest on it")));
    }

    @Test
    void anEmptyRigSaysSo() throws Exception {
        home = collection.home(site, keeper, collection.species(site, "Varanus acanthurus"));
        see("/lamps", containsString("Nothing is recorded that hangs or stands here."));
    }

    @Test
    void residentsShowTheirLengths() throws Exception {
        see("/residents", allOf(containsString("Tiliqua scincoides"), containsString("body 0.20\u00a0m")));
    }

    @Test
    void anUnknownLengthIsSaidToBeUnknown() throws Exception {
        home = collection.home(site, keeper, collection.species(site, "Varanus acanthurus"));
        see("/residents", containsString("body length not known"));
    }

    @Test
    void residentsShowWhatAVetOrdered() throws Exception {
        order(LocalDate.ofInstant(clock.instant(), site.timeZone()).plusDays(7));
        see(
                "/residents",
                allOf(
                        containsString("class=\"state calm\">vet’s order: "),
                        containsString("UV index at most 0.1 at every reachable point.")));
    }

    @Test
    void anOrderForAnotherAnimalIsNotShown() throws Exception {
        order(LocalDate.ofInstant(clock.instant(), site.timeZone()).plusDays(7));
        home = collection.home(site, keeper, collection.species(site, "Varanus acanthurus"));
        see("/residents", not(containsString("vet’s order")));
    }

    private void order(LocalDate lastDay) {
        ordering.place(
                site.id(),
                new NewOrder(
                        home.animal().id(),
                        new Ordered.UvOff(),
                        "eyes shut",
                        Optional.empty(),
                        lastDay,
                        UUID.randomUUID(),
                        keeper.personId()));
    }

    @Test
    void theCourseNamesItsReadingsAndTargets() throws Exception {
        read(1.7);
        see(
                "/course",
                allOf(containsString("UV index 1.7"), containsString("target 1"), containsString("first set up")));
    }

    @Test
    void theCourseIsDrawnForDeskAndPhone() throws Exception {
        see("/course", allOf(containsString("class=\"scroll long\""), containsString("class=\"short\"")));
    }

    @Test
    void everyPartIsReachedByALink() throws Exception {
        String here = "href=\"/enclosures/" + home.enclosureId();
        see(
                "",
                allOf(
                        containsString(here + "/light\""),
                        containsString(here + "/course\""),
                        containsString(here + "/lamps\""),
                        containsString(here + "/residents\""),
                        containsString(here + "/rig\""),
                        containsString(here + "/readings\""),
                        containsString(here + "/audit\""),
                        containsString(here + "/scene.json\"")));
    }

    @Test
    void whoMayNotAuditIsOfferedNone() throws Exception {
        keeper = collection.person(site, Role.KEEPER);
        see("", not(containsString("/audit")));
    }

    @Test
    void aRigThatChangedSinceItWasReadIsToBeReadAgain() throws Exception {
        read(1.7);
        see("", containsString(CHANGED));
        today(containsString(READ_AGAIN));
    }

    @Test
    void thePointsAreNamedThatWereNotReadSinceTheRigChanged() throws Exception {
        read(1.7);
        read(home.shade(), 0.1);
        see("", containsString("Still to be read: P2, P4"));
    }

    @Test
    void onceEveryPointIsReadTheChangedRigAsksForNoMore() throws Exception {
        for (PointFacts point : List.of(home.basking(), home.gradient(), home.shade(), home.nearest())) {
            read(point, 1.7);
        }
        see("", not(containsString(CHANGED)));
        today(not(containsString(READ_AGAIN)));
    }

    @Test
    void theChosenSpeciesIsHandedOn() throws Exception {
        see("?species=5", containsString("/light?species=5"));
    }

    @Test
    void noSpeciesIsHandedOnUnlessOneIsChosen() throws Exception {
        see("", not(containsString("?species")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/lamps", "/residents", "/course", "/scene.json"})
    void anotherSitesEnclosureIsNotFound(String part) throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        pages.perform(get("/enclosures/" + home.enclosureId() + part).with(collection.as(stranger)))
                .andExpect(status().isNotFound());
    }

    private void today(Matcher<String> what) throws Exception {
        pages.perform(get("/").with(collection.as(keeper))).andExpect(content().string(what));
    }

    private void read(double uvi) {
        read(home.basking(), uvi);
    }

    private void read(PointFacts point, double uvi) {
        MeterFacts meter = collection.meter(site);
        logging.log(
                new Visitor(site.id(), keeper.personId()),
                new Entry(
                        UUID.randomUUID(),
                        new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id()),
                        meter.id(),
                        uvi,
                        clock.instant()));
    }

    private void see(String part, Matcher<String> what) throws Exception {
        pages.perform(get("/enclosures/" + home.enclosureId() + part).with(collection.as(keeper)))
                .andExpect(status().isOk())
                .andExpect(content().string(what));
    }
}
