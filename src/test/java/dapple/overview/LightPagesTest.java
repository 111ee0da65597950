package dapple.overview;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.order.NewOrder;
import dapple.order.Ordered;
import dapple.order.Ordering;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.LightInside;
import dapple.prediction.Outlook;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.rig.CoverStep;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.rig.Rigs;
import dapple.site.Formats;
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
import java.util.Optional;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** A tube over a slab, in an enclosure of 1.20 × 0.60 × 0.70 m. */
@PagesTest
class LightPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private EnclosureScenes scenes;

    @Autowired
    private Outlook outlook;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Ordering ordering;

    @Autowired
    private Formats formats;

    @Autowired
    private Rigs rigs;

    @Autowired
    private RigChanging changing;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private SpeciesFacts skink;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER, Role.SUPERVISOR);
        skink = collection.species(site, keeper, "Tiliqua scincoides", new UvZone(2, LightMethod.SUNBEAM));
        home = homes.lit(site, keeper, skink);
    }

    @Test
    void theSectionIsCutThroughTheBaskingPoint() throws Exception {
        see(containsString("Section, 0.30\u00a0m from the front"));
    }

    @Test
    void thePlanLiesAtTheHeightOfTheBaskingPoint() throws Exception {
        see(containsString("Plan at a height of 0.25\u00a0m"));
    }

    @Test
    void theFieldIsFilledAndItsLimitsAreNamed() throws Exception {
        see(allOf(containsString("class=\"limit low\""), containsString("ceiling 3.75")));
    }

    @Test
    void thePredictionAtTheBaskingPointComesWithItsInterval() throws Exception {
        var predicted = light().at(home.basking(), Quantity.UV_INDEX).orElseThrow();
        see(containsString("P1: UV index predicted " + formats.uvi(predicted.amount()) + ", "
                + formats.interval(predicted.interval())));
    }

    @Test
    void thePatchIsHeldAgainstTheLongestBody() throws Exception {
        homes.measureBody(site, keeper, homes.house(site, keeper, skink, home.enclosureId()), 0.9);
        see(containsString("No, 0.90\u00a0m does not fit"));
    }

    @Test
    void withoutAnyBodyWhetherItFitsIsNotKnown() throws Exception {
        home = homes.unlit(site, keeper, skink);
        homes.light(
                site,
                keeper,
                home,
                collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5)),
                RiggedHomes.over());
        see(allOf(
                containsString("Not known: nobody’s body length is on record."),
                containsString("Shares of the places in reach")));
    }

    @Test
    void withoutASizeItIsMeasuredOnly() throws Exception {
        home = collection.home(site, keeper, skink);
        see(allOf(
                containsString("No inner size is on record"),
                containsString("class=\"panel whole-part\""),
                not(containsString("wide-part")),
                containsString("No lamp is on record here"),
                containsString("measured only: no coordinates"),
                not(containsString("class=\"drawing\""))));
    }

    @Test
    void whatIsNotKnownOfALampIsSaid() throws Exception {
        home = homes.unlit(site, keeper, skink);
        var lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        homes.light(site, keeper, home, lamp, Optional.empty());
        see(allOf(
                containsString(lamp.tag() + ": no position, measured only."),
                containsString("Nothing that hangs here is known well enough")));
    }

    @Test
    void withoutATargetThereAreNoZones() throws Exception {
        home = homes.lit(site, keeper, collection.species(site, "Varanus acanthurus"));
        see(allOf(
                containsString("No target for the UV index is in force"),
                not(containsString("Shares of the places in reach"))));
    }

    @Test
    void aReadingFarFromItsPredictionHasANotice() throws Exception {
        double predicted =
                light().at(home.basking(), Quantity.UV_INDEX).orElseThrow().amount();
        read(home.basking(), tenths(predicted * 0.5));
        see(containsString("P1: the reading over the prediction lies outside 0.8 to 1.25"));
    }

    @Test
    void aReadingNearItsPredictionHasNone() throws Exception {
        double predicted =
                light().at(home.basking(), Quantity.UV_INDEX).orElseThrow().amount();
        read(home.basking(), tenths(predicted));
        see(allOf(containsString("× "), not(containsString("the reading over the prediction"))));
    }

    @Test
    void theNewestReadingStandsInTheDrawing() throws Exception {
        read(home.basking(), 1.7);
        see(containsString("P1 1.7"));
    }

    @Test
    void eachPartOfSunlightIsNamedEvenIfUnknown() throws Exception {
        see(allOf(
                containsString("UVA irradiance"),
                containsString("near infrared, IR-A"),
                containsString("no lamp is known to give it"),
                containsString("illuminance")));
    }

    @Test
    void aLampGivesWhatIsUsualOfItsClassThoughNobodyKnowsHowMuch() throws Exception {
        home = homes.unlit(site, keeper, skink);
        LampFacts spot = collection.lamp(site, collection.lampModel(site, LampClass.TUNGSTEN_HALOGEN));
        homes.light(site, keeper, home, spot, RiggedHomes.over());
        see(containsString(spot.tag() + ": usual of the lamp class (common practice, no source)"));
    }

    @Test
    void aCeilingThatThePredictionReachesWithinReachIsSaid() throws Exception {
        see(containsString("is predicted within reach: the ceiling is 3.75"));
    }

    @Test
    void aCeilingThatItDoesNotReachIsNot() throws Exception {
        home = homes.unlit(site, keeper, skink);
        LampFacts tube = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        homes.light(site, keeper, home, tube, Optional.of(RigExamples.above(0.6, 0.3, 2.0)));
        see(allOf(containsString("Most within reach"), not(containsString("is predicted within reach"))));
    }

    @Test
    void severalSpeciesAreComparedAndTheStrictestCeilingIsDrawn() throws Exception {
        SpeciesFacts dragon = collection.species(site, keeper, "Pogona vitticeps", new UvZone(4, LightMethod.SUNBEAM));
        homes.house(site, keeper, dragon, home.enclosureId());
        see(allOf(
                containsString("Between 3.0 and 4.5 it serves nobody."),
                containsString("each needs a basking point of its own"),
                containsString("Where all can be: shade at most 0.11, below 3.75 everywhere"),
                containsString("ceiling 3.75")));
    }

    @Test
    void theTargetOfAnotherSpeciesCanBeDrawn() throws Exception {
        SpeciesFacts dragon = collection.species(site, keeper, "Pogona vitticeps", new UvZone(4, LightMethod.SUNBEAM));
        homes.house(site, keeper, dragon, home.enclosureId());
        pages.perform(get("/enclosures/" + home.enclosureId() + "/light?species=" + dragon.id())
                        .with(collection.as(keeper)))
                .andExpect(content().string(containsString("4.5 to 8.0")));
    }

    @Test
    void theZonesOfAnAnimalUnderAnOrderAreThoseOfTheOrder() throws Exception {
        order(home.animal().id(), new Ordered.Cap(1.7));
        see(allOf(
                containsString("lower ceiling"),
                containsString("those of the vet’s order for " + home.animal().name()),
                containsString("ceiling 1.7"),
                containsString("1.1 to 1.7"),
                not(containsString("ceiling 3.75"))));
    }

    @Test
    void ultravioletOffLeavesNoneAboveATenth() throws Exception {
        order(home.animal().id(), new Ordered.UvOff());
        see(allOf(
                containsString("at most 0.1"),
                not(containsString("ceiling 3.75")),
                containsString("UV index at most 0.1 at every reachable point")));
    }

    @Test
    void aMateWithoutOrderKeepsTheTargetOfTheSpeciesWhichCanBeDrawn() throws Exception {
        homes.house(site, keeper, skink, home.enclosureId());
        order(home.animal().id(), new Ordered.Cap(1.7));
        pages.perform(get("/enclosures/" + home.enclosureId() + "/light?species=" + skink.id())
                        .with(collection.as(keeper)))
                .andExpect(content().string(allOf(containsString("ceiling 3.75"), containsString("by a vet’s order"))));
    }

    @Test
    void theCourseNamesTheOrderByWhichReadingsCount() throws Exception {
        order(home.animal().id(), new Ordered.Cap(1.7));
        pages.perform(get("/enclosures/" + home.enclosureId() + "/course").with(collection.as(keeper)))
                .andExpect(content()
                        .string(containsString(
                                "vet’s order is in force for " + home.animal().name())));
    }

    @Test
    void theHistoryNamesTheOrderThatAReadingWasJudgedBy() throws Exception {
        order(home.animal().id(), new Ordered.Cap(1.7));
        read(home.basking(), 1.5);
        pages.perform(get("/enclosures/" + home.enclosureId() + "/readings").with(collection.as(keeper)))
                .andExpect(content().string(containsString("under a vet’s order")));
    }

    @Test
    void whatWasReadBeforeAnOrderIsToBeReadAgain() throws Exception {
        read(home.basking(), 1.7);
        see(not(containsString("href=\"#stale\"")));
        order(home.animal().id(), new Ordered.Cap(1.5));
        see(containsString("href=\"#stale\""));
    }

    @Test
    void theRowsOfAMixedExhibitSayThatAPointIsToBeReadUnderAnOrder() throws Exception {
        SpeciesFacts dragon = collection.species(site, keeper, "Pogona vitticeps", new UvZone(4, LightMethod.SUNBEAM));
        homes.house(site, keeper, dragon, home.enclosureId());
        read(home.basking(), 1.7);
        see(allOf(containsString("Different needs in one enclosure"), containsString("too weak</span>")));
        order(home.animal().id(), new Ordered.Cap(1.7));
        see(allOf(containsString("stale</span>"), not(containsString("too weak</span>"))));
    }

    @Test
    void whatWasReadBeforeTheRigChangedIsNotHeldAgainstWhatIsPredictedNow() throws Exception {
        double predicted =
                light().at(home.basking(), Quantity.UV_INDEX).orElseThrow().amount();
        read(home.basking(), tenths(2 * predicted));
        see(containsString("Check the lamp, the cover"));
        takeCoverOff();
        see(allOf(containsString("before the rig changed on"), not(containsString("Check the lamp, the cover"))));
    }

    @Test
    void whatWasOnTargetBeforeTheRigChangedIsStale() throws Exception {
        read(home.basking(), 1.7);
        takeCoverOff();
        see(containsString("href=\"#stale\""));
        pages.perform(get("/enclosures/" + home.enclosureId()).with(collection.as(keeper)))
                .andExpect(content().string(containsString("when read: on target")));
    }

    private void takeCoverOff() {
        long cover = rigs.at(site.id(), home.enclosureId(), clock.instant())
                .covers()
                .get(0)
                .id();
        RigEntry entry = new RigEntry(
                site.id(),
                home.enclosureId(),
                clock.instant(),
                "",
                keeper.personId(),
                UUID.randomUUID(),
                Optional.empty());
        changing.make(entry, new CoverStep.TakeOff(cover));
    }

    private void order(long animalId, Ordered ordered) {
        LocalDate week = LocalDate.ofInstant(clock.instant(), site.timeZone()).plusDays(7);
        ordering.place(
                site.id(),
                new NewOrder(
                        animalId, ordered, "eyes shut", Optional.empty(), week, UUID.randomUUID(), keeper.personId()));
    }

    @Test
    void anotherSitesEnclosureIsNotFound() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        pages.perform(get("/enclosures/" + home.enclosureId() + "/light").with(collection.as(stranger)))
                .andExpect(status().isNotFound());
    }

    private LightInside light() {
        EnclosureScene scene =
                scenes.at(site.id(), home.enclosureId(), clock.instant(), Optional.empty(), Optional.empty());
        return outlook.of(scene);
    }

    private static double tenths(double uvi) {
        return Math.round(uvi * 10) / 10.0;
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

    private void see(Matcher<String> what) throws Exception {
        pages.perform(get("/enclosures/" + home.enclosureId() + "/light").with(collection.as(keeper)))
                .andExpect(status().isOk())
                .andExpect(content().string(what));
    }
}
