package dapple.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.NewSpectrum;
import dapple.lamp.SpectrumFiling;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.Outlook;
import dapple.reading.ReadingLogging;
import dapple.rig.Cover;
import dapple.rig.CoverMaterial;
import dapple.rig.CoverStep;
import dapple.rig.CoverTransmittance;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.Provenance;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** A tube over a mesh, fitted two days ago, which burns from 8 to 18 o'clock; four points below. */
@PagesTest
class CommissioningPagesTest {
    /** A display of tenths at a UV index near 2. */
    private static final double SHOWN = 0.05;

    /** Of a model of which nothing was changed. */
    private static final long FIRST_VERSION = 0;

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
    private Sites sites;

    @Autowired
    private Clock clock;

    @Autowired
    private Trials trials;

    @Autowired
    private RigChanging changing;

    @Autowired
    private SpectrumFiling filing;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn lead;
    private SignedIn keeper;
    private MeterFacts meter;
    private Home home;
    private ReadHomes reading;

    @BeforeEach
    void furnish() {
        reading = new ReadHomes(scenes, outlook, logging, clock);
        site = collection.site();
        lead = collection.person(site, Role.SUPERVISOR);
        keeper = collection.person(site, Role.KEEPER);
        meter = collection.meter(site);
        home = homes.lit(
                site, lead, collection.species(site, lead, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
    }

    @Test
    void beforeAnyReadingItSaysWhatToRead() throws Exception {
        see(allOf(
                containsString("Nothing was read yet"),
                containsString("what was changed"),
                containsString("/enclosures/" + home.enclosureId() + "/visit\"")));
    }

    @Test
    void withoutALampThereIsNothingToCommission() throws Exception {
        long empty = collection.emptyEnclosure(site);
        pages.perform(get("/enclosures/" + empty + "/commissioning").with(collection.as(lead)))
                .andExpect(content().string(containsString("Nothing can be commissioned here yet")));
    }

    @Test
    void readingsAsPredictedAgree() throws Exception {
        readAsPredicted();
        see(containsString("The model and the meter agree"));
    }

    @Test
    void readingsOfAColdLampDoNotCount() throws Exception {
        Instant cold = reading.noon(keeper).minus(Duration.ofHours(3).plusMinutes(45));
        reading.readAt(keeper, meter, home.basking(), 2, cold);
        see(allOf(containsString("Nothing was read yet"), containsString("One newer reading does not count")));
    }

    @Test
    void aPointFarFromTheOthersIsNamedWithItsCauses() throws Exception {
        readAsPredicted();
        reading.read(keeper, meter, home.gradient(), 3 * reading.predicted(keeper, home.gradient()));
        see(allOf(
                containsString("disagree: look at this"),
                containsString("P2: UV index read"),
                containsString("raised shelf"),
                containsString("It cannot be accepted")));
    }

    @Test
    void aWeakLampIsNamedWithItsCauses() throws Exception {
        reading.read(keeper, meter, home.points(), 0.4);
        see(allOf(containsString("disagree: look at this"), containsString("an old one")));
    }

    @Test
    void whatWasMeasuredOfALampCountsOnceItIsAccepted() throws Exception {
        reading.read(keeper, meter, home.points(), 1.15);
        double stated = output().reading();
        accept(lead, "All as planned").andExpect(redirectedUrl(path()));
        assertThat(output().mark()).isEqualTo(SourceMark.MEASURED);
        assertThat(output().reading() / stated).isBetween(1.02, 1.15 + SHOWN);
    }

    @Test
    void thePredictionIsNearerToTheMeterOnceItIsAccepted() throws Exception {
        double before = reading.predicted(lead, home.basking());
        reading.read(keeper, meter, home.points(), 1.15);
        accept(lead, "All as planned");
        double after = reading.predicted(lead, home.basking());
        assertThat(Math.abs(after - 1.15 * before)).isLessThan(Math.abs(before - 1.15 * before));
    }

    @Test
    void whoAcceptedWhenAndWhyIsShown() throws Exception {
        readAsPredicted();
        accept(lead, "All as planned");
        see(allOf(
                containsString("Accepted"),
                containsString(lead.fullName()),
                containsString("Reason: All as planned"),
                not(containsString("id=\"accept\""))));
    }

    @Test
    void anAuditShowsWhoAcceptedWhyAndOnWhichReadings() throws Exception {
        long read = reading.read(keeper, meter, home.basking(), reading.predicted(keeper, home.basking()));
        accept(lead, "All as planned");
        audit(
                "",
                allOf(
                        containsString("Accepted by " + lead.fullName() + " on "),
                        containsString("Reason: All as planned"),
                        containsString("href=\"/readings/" + read + "\""),
                        not(containsString("accepted only later"))));
    }

    @Test
    void anAuditOfAnEarlierInstantSaysThatTheRigWasAcceptedOnlyLater() throws Exception {
        readAsPredicted();
        accept(lead, "All as planned");
        String before = LocalDateTime.ofInstant(reading.noon(lead), lead.zone()).toString();
        audit("?at=" + before, containsString("accepted only later"));
    }

    @Test
    void anAuditSaysThatNobodyHasAccepted() throws Exception {
        readAsPredicted();
        audit("", containsString("Nobody had accepted it, or has since."));
    }

    @Test
    void anAuditDoesNotShowTheAcceptanceOfARigThatWasChangedSince() throws Exception {
        readAsPredicted();
        accept(lead, "All as planned");
        changing.make(entry(reading.noon(lead).plus(Duration.ofHours(1))), new CoverStep.Put(pane()));
        audit("", not(containsString("All as planned")));
    }

    private void audit(String query, Matcher<String> matcher) throws Exception {
        pages.perform(get("/enclosures/" + home.enclosureId() + "/audit" + query)
                        .with(collection.as(collection.person(site, Role.INSPECTOR))))
                .andExpect(status().isOk())
                .andExpect(content().string(matcher));
    }

    @Test
    void whoTookAllTheReadingsDoesNotAcceptThem() throws Exception {
        reading.read(lead, meter, home.points(), 1);
        accept(lead, "All as planned").andExpect(content().string(containsString("You took all the readings")));
        assertThat(trial(lead).accepted()).isEmpty();
    }

    @Test
    void atASiteOfOnePersonTheyMay() throws Exception {
        SignedIn alone = alone();
        reading.read(lead, meter, home.points(), 1);
        accept(alone, "Nobody else is here").andExpect(redirectedUrl(path()));
        assertThat(trial(alone).accepted().orElseThrow().ownReadings()).isTrue();
    }

    @Test
    void whatDisagreesIsNotAccepted() throws Exception {
        reading.read(keeper, meter, home.points(), 0.4);
        accept(lead, "Looks fine to me").andExpect(content().string(containsString("It cannot be accepted")));
        assertThat(trial(lead).accepted()).isEmpty();
    }

    @Test
    void aReadingOverTheCeilingIsNotAccepted() throws Exception {
        readAsPredicted();
        reading.read(keeper, meter, home.nearest(), 12);
        accept(lead, "Bright").andExpect(content().string(containsString("Harm is not accepted")));
    }

    @Test
    void withoutAReasonNothingIsStored() throws Exception {
        readAsPredicted();
        accept(lead, " ").andExpect(content().string(containsString("reason-wrong")));
        assertThat(trial(lead).accepted()).isEmpty();
    }

    @Test
    void aFormFromBeforeALaterReadingIsRefusedAndKeepsWhatWasTyped() throws Exception {
        readAsPredicted();
        String old = trial(lead).seen();
        reading.read(keeper, meter, home.basking(), reading.predicted(keeper, home.basking()));
        accept(lead, "Typed at length", old, UUID.randomUUID())
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("Typed at length")));
    }

    @Test
    void theSameFormTwiceIsOneAcceptance() throws Exception {
        readAsPredicted();
        String seen = trial(lead).seen();
        UUID key = UUID.randomUUID();
        accept(lead, "All as planned", seen, key);
        accept(lead, "All as planned", seen, key).andExpect(redirectedUrl(path()));
    }

    @Test
    void theMapIsDrawnAsStatedAndAsMeasured() throws Exception {
        reading.read(keeper, meter, home.points(), 1.15);
        pages.perform(get(path() + "/map").with(collection.as(lead)))
                .andExpect(content()
                        .string(allOf(containsString("id=\"before-title\""), containsString("id=\"after-title\""))));
    }

    @Test
    void theSheetHasARowForEachPoint() throws Exception {
        pages.perform(get(path() + "/sheet").with(collection.as(keeper)))
                .andExpect(content()
                        .string(allOf(
                                containsString(">P1<"),
                                containsString(">P4<"),
                                containsString("0.60\u00a0m from the left"))));
    }

    @Test
    void whoAcceptsIsCautionedOfLightHeatAndAnimals() throws Exception {
        readAsPredicted();
        see(allOf(
                containsString("data-caution=\"ULTRAVIOLET\""),
                containsString("data-caution=\"FIRST_LIGHT\""),
                containsString("data-caution=\"MAINS\"")));
    }

    /** By hand: with a pane of which 90 % is stated and through which 72 % is read, one layer passes 72 %. */
    @Test
    void aCoverThatCameLastIsToldByReadingsBeforeAndAfterIt() throws Exception {
        reading.read(keeper, meter, home.points(), 1);
        double open = reading.predicted(lead, home.basking());
        double near = reading.predicted(lead, home.nearest());
        Instant noon = reading.noon(lead);
        changing.make(entry(noon.plus(Duration.ofHours(1))), new CoverStep.Put(pane()));
        Instant later = noon.plus(Duration.ofHours(3));
        reading.readAt(keeper, meter, home.basking(), 0.8 * open * 0.9, later);
        reading.readAt(keeper, meter, home.nearest(), 0.8 * near * 0.9, later);
        FittedQuantity fit = trial(lead).fits().get(0);
        assertThat(fit.covers())
                .filteredOn(FittedQuantity.OfCover::isTold)
                .singleElement()
                .satisfies(cover -> assertThat(cover.share().orElseThrow()).isCloseTo(0.76, within(0.06)));
    }

    private RigEntry entry(Instant at) {
        return new RigEntry(
                site.id(), home.enclosureId(), at, "a pane", lead.personId(), UUID.randomUUID(), Optional.empty());
    }

    /** Two tubes at one place: whatever is read, either may have given it (worked by thought: their shares are alike everywhere). */
    @Test
    void lampsThatHangAsOneCannotBeToldApart() throws Exception {
        LampFacts other = hangAnother(home);
        see(allOf(
                containsString(other.tag() + ", UV index: even with every point read nobody can say"),
                containsString("A reading ")));
    }

    @Test
    void lampsThatCannotBeToldApartAreNotMeasuredByAnAcceptance() throws Exception {
        hangAnother(home);
        readAsPredicted();
        accept(lead, "Both are new");
        see(containsString("no: the readings do not tell it apart"));
        assertThat(output().mark()).isEqualTo(SourceMark.FROM_MEMORY);
    }

    /** Nanometres and W/(m² nm), invented: a lamp that gives as much at 280 nm as at 310 nm; sunlight ends above 290 nm. */
    private static final String FAULTY = """
            wavelength_nm,irradiance_w_m2_nm
            270,0.001
            280,0.002
            300,0.002
            310,0.002
            400,0.001
            """;

    @Test
    void aFaultyLampIsNamedWithItsCautionAndNotAccepted() throws Exception {
        readAsPredicted();
        fileAFaultySpectrum();
        see(allOf(
                containsString("It cannot be accepted: a lamp that hangs there has radiation shorter than the sun’s."),
                containsString("data-caution=\"SHORT_WAVES\""),
                not(containsString("Accept the rig of"))));
    }

    @Test
    void aFormThatIsSentAllTheSameIsRefusedForTheFaultyLamp() throws Exception {
        readAsPredicted();
        fileAFaultySpectrum();
        accept(lead, "It looks fine").andExpect(content().string(containsString("id=\"reason-wrong\"")));
        assertThat(trial(lead).accepted()).isEmpty();
    }

    private LampFacts hangAnother(Home where) {
        LampFacts other = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        Hanging hanging =
                new Hanging("beside it", RiggedHomes.over(), Optional.of(RigExamples.tenHours()), Optional.empty());
        changing.make(
                new RigEntry(
                        site.id(),
                        where.enclosureId(),
                        reading.noon(lead).minus(Duration.ofHours(20)),
                        "one more",
                        lead.personId(),
                        UUID.randomUUID(),
                        Optional.empty()),
                new LampStep.Fit(other.id(), hanging));
        return other;
    }

    private void fileAFaultySpectrum() {
        LampModelFacts model = reading.scene(lead, home.enclosureId())
                .rig()
                .rig()
                .fittings()
                .get(0)
                .lamp()
                .model();
        filing.fileSpectrum(
                site.id(), model.id(), FIRST_VERSION, NewSpectrum.of("a laboratory", FAULTY, lead.personId()));
    }

    private static Cover pane() {
        CoverTransmittance stated = new CoverTransmittance(0.9, new Provenance(SourceMark.FROM_MEMORY, "invented"));
        return new Cover(
                "pane",
                Optional.of(0.64),
                Optional.empty(),
                new CoverMaterial.Passing(false, Map.of(Quantity.UV_INDEX, stated)),
                1);
    }

    @Test
    void theProtocolComesAsAFile() throws Exception {
        readAsPredicted();
        see(containsString("href=\"" + path() + ".csv\""));
        CsvTable table = CsvTable.of(pages.perform(get(path() + ".csv").with(collection.as(lead)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray());
        Map<String, String> basking = table.rows().stream()
                .filter(row -> home.basking().code().equals(row.get("Point")))
                .findFirst()
                .orElseThrow();
        assertThat(basking)
                .containsEntry("Quantity", "UV index")
                .containsEntry("To be read", "yes")
                .containsEntry("Meter", meter.code())
                .containsEntry("Accepted by", "");
        assertThat(Double.parseDouble(basking.get("Amount, corrected")))
                .isCloseTo(Double.parseDouble(basking.get("Predicted")), within(SHOWN));
    }

    private void readAsPredicted() {
        reading.read(keeper, meter, home.points(), 1);
    }

    private String path() {
        return "/enclosures/" + home.enclosureId() + "/commissioning";
    }

    private Trial trial(SignedIn person) {
        return trials.open(person, home.enclosureId()).trial().orElseThrow();
    }

    private LampOutput output() {
        LampFacts lamp = reading.scene(lead, home.enclosureId())
                .rig()
                .rig()
                .fittings()
                .get(0)
                .lamp();
        return lamp.outputs().get(0);
    }

    private SignedIn alone() {
        Settings settings = Settings.USUAL.withOnePerson();
        sites.settle(site.id(), 0, settings);
        return new SignedIn(
                lead.personId(),
                lead.signInName(),
                lead.fullName(),
                lead.siteId(),
                lead.siteName(),
                lead.zone(),
                settings,
                lead.roles());
    }

    private void see(Matcher<String> matcher) throws Exception {
        pages.perform(get(path()).with(collection.as(lead)))
                .andExpect(status().isOk())
                .andExpect(content().string(matcher));
    }

    private ResultActions accept(SignedIn person, String reason) throws Exception {
        return accept(person, reason, trial(person).seen(), UUID.randomUUID());
    }

    private ResultActions accept(SignedIn person, String reason, String seen, UUID key) throws Exception {
        return pages.perform(post(path())
                .param("key", key.toString())
                .param("seen", seen)
                .param("reason", reason)
                .with(csrf())
                .with(collection.as(person)));
    }
}
