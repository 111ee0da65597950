package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dapple.agreement.MeterFindings;
import dapple.agreement.Tellings;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.Drafts;
import dapple.draft.LampPick;
import dapple.lamp.LampClass;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.Rigs;
import dapple.site.Caution;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.DraftedHomes;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.MessageSource;
import org.springframework.test.web.servlet.MockMvc;

/** Which cautions stand beside which decision. A page that lets people near a lamp belongs in here. */
@PagesTest
class CautionPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Tellings tellings;

    @Autowired
    private MeterFindings findings;

    @Autowired
    private MessageSource messages;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Drafts drafts;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private Rigs rigs;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn supervisor;
    private MeterFacts meter;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR, Role.VET);
        meter = collection.meter(site);
        home = collection.home(
                site,
                supervisor,
                collection.species(site, supervisor, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
    }

    @Test
    void whoReadsAtALampIsWarnedOfItsLightAndHeat() throws Exception {
        String ask = "/enclosures/" + home.enclosureId() + "/visits/" + UUID.randomUUID() + "/points/"
                + home.basking().id();
        assertThat(cautions(ask)).isEqualTo(EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT));
    }

    @Test
    void whoCalibratesAtALampIsWarnedOfItsLightAndHeat() throws Exception {
        assertThat(cautions("/meters/" + meter.id() + "/calibrations/new"))
                .isEqualTo(EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT));
    }

    @Test
    void whatToDoAboutAMeterThatHasChanged() throws Exception {
        tellings.knocked(site, meter, -0.1);
        long finding = findings.open(site.id()).get(0).id();
        assertThat(cautions("/meters/agreement/" + finding)).isEqualTo(EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT));
    }

    @Test
    void aMeterUnderItsReferenceLamp() throws Exception {
        assertThat(cautions("/meters/" + meter.id() + "/reference-lamp"))
                .isEqualTo(EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT));
    }

    @Test
    void whoSwitchesALampOffIsWarnedOfEverything() throws Exception {
        assertThat(cautions("/readings/" + read(9.1)))
                .isEqualTo(EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT, Caution.MAINS, Caution.VET));
    }

    @Test
    void whoReadsOnTargetIsNotWarnedAgain() throws Exception {
        assertThat(cautions("/readings/" + read(4.5))).isEmpty();
    }

    @Test
    void whoLooksAtAnAnimalIsSentToTheVet() throws Exception {
        assertThat(cautions("/animals/" + home.animal().id())).isEqualTo(EnumSet.of(Caution.VET));
    }

    @Test
    void whoFilesAnAnimalsSheetIsSentToTheVet() throws Exception {
        assertThat(cautions("/animals/" + home.animal().id() + "/sheet")).isEqualTo(EnumSet.of(Caution.VET));
    }

    @Test
    void whoSetsAFirstTargetIsWarnedOfMoreUltraviolet() throws Exception {
        collection.species(site, "Uromastyx ornata");
        assertThat(cautions("/targets/confirmation")).isEqualTo(EnumSet.of(Caution.TARGET_RAISED, Caution.VET));
    }

    @Test
    void whoEntersAnAnimalIsToldOfPigment() throws Exception {
        assertThat(cautions("/animals/new")).isEqualTo(EnumSet.of(Caution.PIGMENT));
    }

    @Test
    void whoOrdersLightIsToldOfWhatElseTheLampGives() throws Exception {
        assertThat(cautions("/animals/" + home.animal().id() + "/orders/new"))
                .isEqualTo(EnumSet.of(Caution.ORDER, Caution.VET));
    }

    @Test
    void whoLooksAtAnUltravioletTubeIsWarnedOfAllOfIt() throws Exception {
        long lamp = collection
                .lamp(site, collection.lampModel(site, LampClass.TUBE_T5))
                .id();
        assertThat(cautions("/lamps/" + lamp))
                .isEqualTo(EnumSet.of(Caution.ULTRAVIOLET, Caution.SPECTRUM, Caution.MERCURY, Caution.MAINS));
    }

    @Test
    void whoLooksAtAMetalHalideModelIsWarnedOfAllOfIt() throws Exception {
        long model = collection.lampModel(site, LampClass.METAL_HALIDE).id();
        assertThat(cautions("/lamp-models/" + model))
                .isEqualTo(EnumSet.of(
                        Caution.ULTRAVIOLET,
                        Caution.SPECTRUM,
                        Caution.OUTER_GLASS,
                        Caution.MERCURY,
                        Caution.HEAT,
                        Caution.MAINS));
    }

    /** Where the ultraviolet is not known it may be too much. */
    @Test
    void whoReadsChecksThatCannotBeSaidIsWarnedOfUltraviolet() throws Exception {
        assertThat(cautions("/enclosures/" + home.enclosureId() + "/light"))
                .isEqualTo(EnumSet.of(Caution.ULTRAVIOLET, Caution.VET));
    }

    @Test
    void whoInstallsAnUltravioletTubeIsWarnedOfAllOfIt() throws Exception {
        assertThat(cautions(draftOfATube() + "/installation"))
                .isEqualTo(EnumSet.of(
                        Caution.ULTRAVIOLET, Caution.SPECTRUM, Caution.MERCURY, Caution.HEAT, Caution.MAINS));
    }

    @Test
    void whoSolvesForAnUltravioletTubeIsWarnedOfAllOfIt() throws Exception {
        assertThat(cautions(draftOfATube() + "/solving"))
                .isEqualTo(EnumSet.of(
                        Caution.ULTRAVIOLET, Caution.SPECTRUM, Caution.MERCURY, Caution.HEAT, Caution.MAINS));
    }

    @Test
    void whoTouchesABallastIsWarnedOfAllOfTheLamp() throws Exception {
        Home lit = lit();
        long tube = rigs.at(site.id(), lit.enclosureId(), clock.instant())
                .fittings()
                .get(0)
                .id();
        assertThat(cautions("/enclosures/" + lit.enclosureId() + "/rig/lamps/" + tube + "/gear"))
                .isEqualTo(EnumSet.of(
                        Caution.ULTRAVIOLET, Caution.SPECTRUM, Caution.MERCURY, Caution.HEAT, Caution.MAINS));
    }

    @Test
    void whoSetsTimersIsWarnedOfTheMains() throws Exception {
        assertThat(cautions("/enclosures/" + lit().enclosureId() + "/timers/sheet"))
                .isEqualTo(EnumSet.of(Caution.MAINS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/commissioning", "/commissioning/sheet"})
    void whoReadsToCommissionIsWarnedOfTheLampsThatHang(String page) throws Exception {
        assertThat(cautions("/enclosures/" + lit().enclosureId() + page))
                .isEqualTo(EnumSet.of(
                        Caution.ULTRAVIOLET, Caution.SPECTRUM, Caution.MERCURY, Caution.HEAT, Caution.MAINS));
    }

    @Test
    void whoReadsALampOnTheBenchIsWarnedOfItsLightAndHeat() throws Exception {
        long lamp = collection
                .lamp(site, collection.lampModel(site, LampClass.TUBE_T5))
                .id();
        assertThat(cautions("/lamps/" + lamp + "/bench"))
                .isEqualTo(EnumSet.of(
                        Caution.ULTRAVIOLET, Caution.SPECTRUM, Caution.MERCURY, Caution.HEAT, Caution.MAINS));
    }

    private Home lit() {
        return homes.lit(
                site,
                supervisor,
                collection.species(site, supervisor, "Tiliqua scincoides", new UvZone(2, LightMethod.SUNBEAM)));
    }

    private String draftOfATube() {
        LampPick tube = new LampPick.Stock(collection
                .lamp(site, collection.lampModel(site, LampClass.TUBE_T5))
                .id());
        DraftRig rig = new DraftRig(List.of(DraftedHomes.lamp(tube, 0.6)), List.of(), List.of());
        DraftPlace place = new DraftPlace(site.id(), home.enclosureId());
        return "/enclosures/" + home.enclosureId() + "/desk/"
                + drafts.make(place, "Plan A", rig, supervisor.personId());
    }

    private long read(double uvi) {
        VisitPlace place = new VisitPlace(
                UUID.randomUUID(), home.enclosureId(), home.basking().id());
        return logging.log(
                Visitor.of(supervisor), new Entry(UUID.randomUUID(), place, meter.id(), uvi, clock.instant()));
    }

    private Set<Caution> cautions(String path) throws Exception {
        String page = pages.perform(get(path).with(csrf()).with(collection.as(supervisor)))
                .andReturn()
                .getResponse()
                .getContentAsString();
        return Arrays.stream(Caution.values())
                .filter(caution -> page.contains(messages.getMessage("caution." + caution.name(), null, Locale.UK)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Caution.class)));
    }
}
