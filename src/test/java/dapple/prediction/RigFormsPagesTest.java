package dapple.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.Enclosures;
import dapple.enclosure.InnerSize;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.CircuitFacts;
import dapple.rig.Circuits;
import dapple.rig.CoverMaterial;
import dapple.rig.CoverStep;
import dapple.rig.DailyTimer;
import dapple.rig.FurnitureShape;
import dapple.rig.LampStep;
import dapple.rig.Rig;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.rig.RigStep;
import dapple.rig.Rigs;
import dapple.site.Caution;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class RigFormsPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private Circuits circuits;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private long roomId;
    private long enclosureId;
    private LampFacts lamp;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        roomId = enclosures.addRoom(site.id(), "Dry room", 1);
        enclosureId = enclosures.add(site.id(), roomId, "E1", 1, Optional.empty());
        lamp = lamp(LampClass.TUBE_T5);
    }

    @Test
    void aLampIsFittedAsTheFormSays() throws Exception {
        CircuitFacts circuit = circuits.add(site.id(), Optional.empty(), "A1");
        send("/lamps/new", fit(), "circuitId", String.valueOf(circuit.id()))
                .andExpect(redirectedUrl(rig() + "?changed"));
        assertThat(now().fittings()).singleElement().satisfies(fitting -> {
            assertThat(fitting.lamp().id()).isEqualTo(lamp.id());
            assertThat(fitting.hanging().mount()).contains(RigExamples.above(0.6, 0.3, 0.9));
            assertThat(fitting.hanging().timer()).contains(RigExamples.tenHours());
            assertThat(fitting.circuit()).contains(circuit);
        });
    }

    @Test
    void aLampWithoutPositionAndTimerIsFittedAllTheSame() throws Exception {
        Map<String, String> form = fit();
        List.of("xMetres", "yMetres", "zMetres", "lengthTo", "onAt", "offAt").forEach(field -> form.put(field, ""));
        send("/lamps/new", form).andExpect(status().is3xxRedirection());
        assertThat(now().fittings().get(0).hanging().mount()).isEmpty();
        assertThat(now().fittings().get(0).hanging().timer()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "lampId, ''",
        "lampId, none",
        "place, ''",
        "xMetres, left",
        "xMetres, 1e400",
        "yMetres, NaN",
        "zMetres, -10",
        "zMetres, 1.234",
        "lean, -1",
        "lean, 181",
        "leanTo, 361",
        "lengthTo, x",
        "onAt, 25:00",
        "onAt, ''",
        "offAt, noon",
        "circuitId, x",
        "at, ''",
        "at, soon",
        "at, 2999-01-01T00:00",
        "at, 1066-01-01T00:00",
        "at, 2026-03-29T01:30",
        "at, 2025-10-26T01:30"
    })
    void aWrongLampComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        send("/lamps/new", fit(), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content()
                        .string(containsString("value=\"basking tube\""
                                .replace("basking tube", field.equals("place") ? typed : "basking tube"))));
        assertThat(now().isEmpty()).isTrue();
    }

    @Test
    void atATimeThatComesTwiceTheFormAsksWhichIsMeant() throws Exception {
        send("/lamps/new", fit(), "at", "2025-10-26T01:30")
                .andExpect(content().string(containsString("name=\"atWhich\"")));
        Map<String, String> form = fit();
        form.put("at", "2025-10-26T01:30");
        form.put("atWhich", "SECOND");
        send("/lamps/new", form).andExpect(status().is3xxRedirection());
        assertThat(now().fittings().get(0).span().from()).isEqualTo(Instant.parse("2025-10-26T01:30:00Z"));
    }

    @ParameterizedTest
    @CsvSource({"xMetres, -5", "xMetres, 90", "yMetres, 30", "zMetres, 6.4"})
    void aPlaceInCentimetresIsNotTakenForMetres(String field, String typed) throws Exception {
        enclosureId = enclosures.add(site.id(), roomId, "E2", 2, Optional.of(new InnerSize(1.2, 0.6, 0.6)));
        send("/lamps/new", fit(), field, typed)
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"" + typed + "\"")));
        assertThat(now().isEmpty()).isTrue();
    }

    @Test
    void aLampThatLeansMustSayWhereTo() throws Exception {
        send("/lamps/new", fit(), "lean", "20")
                .andExpect(content().string(containsString("Enter where it leans to: 0 to the right")));
    }

    @Test
    void aLampDoesNotPointAlongItsLength() throws Exception {
        Map<String, String> form = fit();
        form.putAll(Map.of("lean", "90", "leanTo", "180", "lengthTo", "0"));
        send("/lamps/new", form)
                .andExpect(content().string(containsString("A lamp cannot point along its own length.")));
    }

    @Test
    void aLampFittedElsewhereIsRefusedByNamingWhere() throws Exception {
        long other = enclosures.add(site.id(), roomId, "E44", 1, Optional.empty());
        changing.make(entry(other, daysAgo(2)), new LampStep.Fit(lamp.id(), RigExamples.hanging("spot")));
        send("/lamps/new", fit())
                .andExpect(content().string(containsString("id=\"lampId-wrong\"")))
                .andExpect(content().string(containsString("This lamp hangs in E44 since")));
    }

    @Test
    void aLampThatHangsElsewhereIsSaidToWhenItIsChosen() throws Exception {
        long other = enclosures.add(site.id(), roomId, "E44", 1, Optional.empty());
        changing.make(entry(other, daysAgo(2)), new LampStep.Fit(lamp.id(), RigExamples.hanging("spot")));
        see("/lamps/new").andExpect(content().string(containsString("hangs in E44")));
    }

    @Test
    void anotherSitesLampIsNotFound() throws Exception {
        SiteFacts other = collection.site();
        LampFacts foreign = collection.lamp(other, collection.lampModel(other, LampClass.TUBE_T5));
        send("/lamps/new", fit(), "lampId", String.valueOf(foreign.id())).andExpect(status().isNotFound());
        send("/lamps/new/preview", fit(), "lampId", String.valueOf(foreign.id()))
                .andExpect(status().isNotFound());
    }

    @Test
    void aFormSentTwiceShowsTheResultOfTheFirst() throws Exception {
        Map<String, String> form = fit();
        send("/lamps/new", form).andExpect(redirectedUrl(rig() + "?changed"));
        send("/lamps/new", form).andExpect(redirectedUrl(rig() + "?changed"));
        assertThat(now().fittings()).hasSize(1);
    }

    @Test
    void aRemovalSentTwiceShowsTheResultOfTheFirst() throws Exception {
        String removal = "/lamps/" + fitted() + "/removal";
        Map<String, String> form = dated();
        send(removal, form).andExpect(redirectedUrl(rig() + "?changed"));
        send(removal, form).andExpect(redirectedUrl(rig() + "?changed"));
        assertThat(now().fittings()).isEmpty();
    }

    @Test
    void aStaleFormComesBackBesideTheRigAsItIsNow() throws Exception {
        Map<String, String> form = fit();
        make(new CoverStep.Put(RigExamples.sheet(0.9)));
        send("/lamps/new", form)
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("Somebody has changed this rig since")))
                .andExpect(content().string(containsString("front glass")))
                .andExpect(content().string(containsString("value=\"basking tube\"")));
        assertThat(now().fittings()).isEmpty();
    }

    @Test
    void aStaleFormCanBeSavedOverWhatChanged() throws Exception {
        Map<String, String> form = fit();
        make(new CoverStep.Put(RigExamples.sheet(0.9)));
        String page = send("/lamps/new", form).andReturn().getResponse().getContentAsString();
        String seen = String.valueOf(rigs.lastRecorded(site.id(), enclosureId));
        assertThat(page).contains("name=\"seen\" value=\"" + seen + "\"");
        send("/lamps/new", form, "seen", seen).andExpect(status().is3xxRedirection());
    }

    @Test
    void aStalePreviewIsSaidToo() throws Exception {
        Map<String, String> form = fit();
        make(new CoverStep.Put(RigExamples.sheet(0.9)));
        send("/lamps/new/preview", form).andExpect(status().isConflict());
    }

    @Test
    void aPartThatIsGoneMeanwhileIsSaidWithTheRigAsItIsNow() throws Exception {
        long fitting = fitted();
        Map<String, String> form = dated();
        make(new LampStep.TakeOut(fitting));
        send("/lamps/" + fitting + "/removal", form).andExpect(status().isConflict());
        form.put("seen", String.valueOf(rigs.lastRecorded(site.id(), enclosureId)));
        send("/lamps/" + fitting + "/removal", form)
                .andExpect(content().string(containsString("This part is gone or changed since")));
    }

    @Test
    void aPartThatIsNotThereIsNotFound() throws Exception {
        see("/lamps/999999/swap").andExpect(status().isNotFound());
        see("/cover/999999/layers").andExpect(status().isNotFound());
        see("/furniture/999999/move").andExpect(status().isNotFound());
    }

    @Test
    void aLampIsSwapped() throws Exception {
        String swap = "/lamps/" + fitted() + "/swap";
        LampFacts fresh = lamp(LampClass.TUBE_T5);
        see(swap).andExpect(content().string(containsString(fresh.tag())));
        send(swap, dated(), "lampId", String.valueOf(fresh.id())).andExpect(status().is3xxRedirection());
        assertThat(now().fittings().get(0).lamp().id()).isEqualTo(fresh.id());
    }

    @Test
    void aLampIsNotSwappedForItself() throws Exception {
        send("/lamps/" + fitted() + "/swap", dated(), "lampId", String.valueOf(lamp.id()))
                .andExpect(content().string(containsString("id=\"lampId-wrong\"")))
                .andExpect(content().string(containsString("This lamp hangs there already.")));
    }

    @Test
    void onceALampIsChosenTheCautionsAreOfIt() throws Exception {
        String swap = "/lamps/" + fitted() + "/swap";
        lamp(LampClass.METAL_HALIDE);
        LampFacts bar = lamp(LampClass.LED_BAR);
        String glass = "data-caution=\"OUTER_GLASS\"";
        see(swap).andExpect(content().string(containsString(glass)));
        send(swap + "/preview", dated(), "lampId", String.valueOf(bar.id()))
                .andExpect(content().string(not(containsString(glass))));
    }

    @Test
    void lampsInStoreAreOfferedBeforeThoseThatHang() throws Exception {
        String swap = "/lamps/" + fitted() + "/swap";
        LampFacts fresh = lamp(LampClass.TUBE_T5);
        see(swap)
                .andExpect(content()
                        .string(matchesPattern(
                                "(?s).*<option value=\"" + fresh.id() + "\".*<option value=\"" + lamp.id() + "\".*")));
    }

    @Test
    void aChangedRigIsToBeReadAgain() throws Exception {
        fitted();
        see("?changed")
                .andExpect(content().string(containsString("/enclosures/" + enclosureId + "/visit\"")))
                .andExpect(content().string(containsString("read every point again, 30 min after")));
    }

    @Test
    void aLampIsMovedFromWhereItHangs() throws Exception {
        String move = "/lamps/" + fitted() + "/move";
        see(move)
                .andExpect(content()
                        .string(allOf(
                                containsString("value=\"basking tube\""),
                                containsString("name=\"zMetres\" value=\"0.90\""))));
        Map<String, String> form = dated();
        form.putAll(
                Map.of("place", "basking tube", "xMetres", "0.6", "yMetres", "0.3", "zMetres", "0.7", "lengthTo", "0"));
        send(move, form).andExpect(status().is3xxRedirection());
        assertThat(now().fittings().get(0).hanging().mount()).contains(RigExamples.above(0.6, 0.3, 0.7));
    }

    @Test
    void aTimerIsChanged() throws Exception {
        String timer = "/lamps/" + fitted() + "/timer";
        see(timer).andExpect(content().string(containsString("08:00")));
        Map<String, String> form = dated();
        form.putAll(Map.of("onAt", "07:30", "offAt", ""));
        send(timer, form).andExpect(content().string(containsString("id=\"offAt-wrong\"")));
        form.put("offAt", "19:30");
        send(timer, form).andExpect(status().is3xxRedirection());
        assertThat(now().fittings().get(0).hanging().timer())
                .contains(new DailyTimer(LocalTime.of(7, 30), LocalTime.of(19, 30)));
    }

    @Test
    void aChangeBeforeThePartBeganIsRefusedAtItsTime() throws Exception {
        String removal = "/lamps/" + fitted() + "/removal";
        send(removal, dated(), "at", local(daysAgo(9)))
                .andExpect(content().string(containsString("This part is as it is since")))
                .andExpect(content().string(containsString("id=\"at-wrong\"")));
    }

    @Test
    void aMeshIsEnteredByItsWeave() throws Exception {
        send("/cover/new", weave()).andExpect(status().is3xxRedirection());
        assertThat(now().covers()).singleElement().satisfies(facts -> {
            assertThat(facts.cover().heightMetres()).contains(0.85);
            assertThat(facts.cover().material())
                    .isInstanceOfSatisfying(
                            CoverMaterial.Weave.class,
                            weave -> assertThat(weave.wireMetres()).isEqualTo(0.000_25));
        });
    }

    @ParameterizedTest
    @CsvSource({
        "name, ''",
        "wireMillimetres, ''",
        "wireMillimetres, thin",
        "pitchMillimetres, 0.2",
        "weaveMark, ''",
        "weaveMark, GUESSED",
        "heightMetres, 1e400",
        "layers, 0",
        "layers, 1.5",
        "layers, ''",
        "source, ''",
        "lowXMetres, 0.1"
    })
    void aWrongMeshComesBackWithAMessage(String field, String typed) throws Exception {
        String wrong = field.equals("lowXMetres") ? "lowYMetres" : field;
        send("/cover/new", weave(), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + wrong + "-wrong\"")))
                .andExpect(content()
                        .string(containsString(
                                "value=\"0.85\"".replace("0.85", field.equals("heightMetres") ? typed : "0.85"))));
    }

    @Test
    void aSheetIsEnteredByWhatPasses() throws Exception {
        Map<String, String> form = sheet();
        form.putAll(Map.of("uviPercent", "4", "uviMark", "MEASURED"));
        send("/cover/new", form).andExpect(status().is3xxRedirection());
        assertThat(now().covers().get(0).cover().material())
                .isInstanceOfSatisfying(CoverMaterial.Passing.class, known -> {
                    assertThat(known.byQuantity()).containsOnlyKeys(Quantity.UV_INDEX);
                    assertThat(known.isMesh()).isFalse();
                });
    }

    @ParameterizedTest
    @ValueSource(strings = {"101", "-1", "all", "NaN"})
    void whatPassesIsAPercentage(String percent) throws Exception {
        Map<String, String> form = sheet();
        form.putAll(Map.of("irAPercent", percent, "irAMark", "MEASURED"));
        send("/cover/new", form).andExpect(content().string(containsString("id=\"irAPercent-wrong\"")));
    }

    @Test
    void whatPassesSaysHowItIsKnown() throws Exception {
        send("/cover/new", sheet(), "uviPercent", "50")
                .andExpect(content().string(containsString("id=\"uviMark-wrong\"")))
                .andExpect(content().string(containsString("Say how it is known.")));
    }

    @Test
    void aLayerIsAdded() throws Exception {
        String cover = "/cover/" + covered();
        see(cover + "/layers").andExpect(content().string(containsString("name=\"layers\" value=\"1\"")));
        send(cover + "/layers", dated(), "layers", "2").andExpect(status().is3xxRedirection());
        assertThat(now().covers().get(0).cover().layers()).isEqualTo(2);
    }

    @Test
    void aCoverIsReplaced() throws Exception {
        String cover = "/cover/" + covered();
        see(cover + "/replacement?kind=SHEET").andExpect(content().string(containsString("value=\"lid mesh\"")));
        send(cover + "/replacement", sheet()).andExpect(status().is3xxRedirection());
        assertThat(now().covers()).extracting(facts -> facts.cover().name()).containsExactly("glass");
    }

    @Test
    void aCoverIsTakenOff() throws Exception {
        send("/cover/" + covered() + "/removal", dated()).andExpect(status().is3xxRedirection());
        assertThat(now().covers()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"BOX, Block", "CYLINDER, Post", "CAPSULE, Branch"})
    void furnitureOfEachKindIsPut(String kind, String shape) throws Exception {
        see("/furniture/new?kind=" + kind).andExpect(status().isOk());
        send("/furniture/new", furniture(kind)).andExpect(status().is3xxRedirection());
        assertThat(now().furniture().get(0).furniture().shape().getClass().getSimpleName())
                .isEqualTo(shape);
        assertThat(now().furniture().get(0).furniture().isRestedOn()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "BOX, depthMetres, ''",
        "BOX, yawDegrees, 400",
        "BOX, name, ''",
        "BOX, xMetres, ''",
        "BOX, heightMetres, 0",
        "CYLINDER, radiusMetres, ''",
        "CYLINDER, heightMetres, tall",
        "CAPSULE, endZMetres, ''",
        "CAPSULE, radiusMetres, NaN"
    })
    void wrongFurnitureComesBackWithAMessage(String kind, String field, String typed) throws Exception {
        send("/furniture/new", furniture(kind), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")));
    }

    @Test
    void furnitureIsMovedFromWhereItStandsAndRemoved() throws Exception {
        send("/furniture/new", furniture("BOX"), "at", local(daysAgo(1)));
        long item = now().furniture().get(0).id();
        see("/furniture/" + item + "/move")
                .andExpect(content().string(containsString("name=\"widthMetres\" value=\"0.40\"")));
        send("/furniture/" + item + "/move", furniture("BOX"), "xMetres", "0.7").andExpect(status().is3xxRedirection());
        FurnitureShape shape = now().furniture().get(0).furniture().shape();
        assertThat(((FurnitureShape.Block) shape).least().x()).isEqualTo(0.7);
        long moved = now().furniture().get(0).id();
        send("/furniture/" + moved + "/removal", dated(), "at", local(clock.instant()));
        see("/furniture/" + item + "/removal").andExpect(status().isNotFound());
    }

    @ParameterizedTest
    @ValueSource(strings = {"LOFT", "'"})
    void aKindThatIsNoneIsRefused(String kind) throws Exception {
        see("/furniture/new?kind=" + kind).andExpect(status().isBadRequest());
    }

    @Test
    void aNoteWithControlCharactersComesBack() throws Exception {
        send("/lamps/new", fit(), "note", "nul\u0000").andExpect(content().string(containsString("id=\"note-wrong\"")));
    }

    @Test
    void whoFitsAMetalHalideIsWarnedOfAllThatItCanDo() throws Exception {
        lamp(LampClass.METAL_HALIDE);
        for (Caution caution : List.of(
                Caution.MAINS,
                Caution.HEAT,
                Caution.ULTRAVIOLET,
                Caution.MERCURY,
                Caution.OUTER_GLASS,
                Caution.SPECTRUM)) {
            see("/lamps/new").andExpect(content().string(containsString("data-caution=\"" + caution + "\"")));
        }
    }

    @Test
    void whoTakesACoverOffUnderAMetalHalideIsWarnedOfItsGlass() throws Exception {
        LampFacts halide = lamp(LampClass.METAL_HALIDE);
        make(new LampStep.Fit(halide.id(), RigExamples.hanging("spot")));
        see("/cover/" + covered() + "/removal")
                .andExpect(content().string(containsString("data-caution=\"OUTER_GLASS\"")));
    }

    @Test
    void whoPutsFurnitureUnderNoLampIsNotWarnedOfMercury() throws Exception {
        see("/furniture/new").andExpect(content().string(not(containsString("data-caution=\"MERCURY\""))));
    }

    private String rig() {
        return "/enclosures/" + enclosureId + "/rig";
    }

    private Rig now() {
        return rigs.at(site.id(), enclosureId, clock.instant());
    }

    private long fitted() {
        make(new LampStep.Fit(lamp.id(), RigExamples.hanging("basking tube")));
        return now().fittings().get(0).id();
    }

    private long covered() {
        make(new CoverStep.Put(RigExamples.mesh(Optional.of(0.85))));
        return now().covers().get(0).id();
    }

    private void make(RigStep step) {
        changing.make(entry(enclosureId, step instanceof LampStep.TakeOut ? daysAgo(1) : daysAgo(3)), step);
    }

    private RigEntry entry(long enclosure, Instant at) {
        return new RigEntry(site.id(), enclosure, at, "", lead.personId(), UUID.randomUUID(), Optional.empty());
    }

    private LampFacts lamp(LampClass lampClass) {
        return collection.lamp(site, collection.lampModel(site, lampClass));
    }

    private Instant daysAgo(int days) {
        return clock.instant().minus(Duration.ofDays(days));
    }

    private String local(Instant at) {
        return LocalDateTime.ofInstant(at, site.timeZone()).toString().substring(0, 16);
    }

    private Map<String, String> dated() {
        return new HashMap<>(Map.of(
                "key",
                UUID.randomUUID().toString(),
                "seen",
                String.valueOf(rigs.lastRecorded(site.id(), enclosureId)),
                "at",
                local(clock.instant().minus(Duration.ofHours(1))),
                "note",
                "for a test"));
    }

    private Map<String, String> fit() {
        Map<String, String> form = dated();
        form.putAll(Map.of(
                "lampId", String.valueOf(lamp.id()),
                "place", "basking tube",
                "xMetres", "0,6",
                "yMetres", "0.3",
                "zMetres", "0.9",
                "lengthTo", "0",
                "onAt", "08:00",
                "offAt", "18:00"));
        return form;
    }

    private Map<String, String> weave() {
        Map<String, String> form = dated();
        form.putAll(Map.of(
                "kind", "WEAVE",
                "name", "lid mesh",
                "heightMetres", "0.85",
                "wireMillimetres", "0.25",
                "pitchMillimetres", "2.5",
                "weaveMark", "MEASURED",
                "source", "calliper",
                "layers", "1"));
        return form;
    }

    private Map<String, String> sheet() {
        Map<String, String> form = dated();
        form.putAll(
                Map.of("kind", "SHEET", "name", "glass", "heightMetres", "0.5", "source", "meter M1", "layers", "1"));
        return form;
    }

    private Map<String, String> furniture(String kind) {
        Map<String, String> form = dated();
        form.putAll(Map.of("kind", kind, "name", "thing", "xMetres", "0.1", "yMetres", "0.1", "zMetres", "0"));
        form.putAll(Map.of("endXMetres", "0.9", "endYMetres", "0.1", "endZMetres", "0.5", "widthMetres", "0.4"));
        form.putAll(Map.of("depthMetres", "0.2", "heightMetres", "0.1", "radiusMetres", "0.05", "restedOn", "true"));
        return form;
    }

    private ResultActions see(String path) throws Exception {
        return asking().see(rig() + path);
    }

    private ResultActions send(String path, Map<String, String> form, String field, String typed) throws Exception {
        return asking().send(rig() + path, form, field, typed);
    }

    private ResultActions send(String path, Map<String, String> form) throws Exception {
        return asking().send(rig() + path, form);
    }

    private Asking asking() {
        return new Asking(pages, collection.as(lead));
    }
}
