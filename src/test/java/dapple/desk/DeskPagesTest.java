package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.draft.DraftFacts;
import dapple.draft.DraftLamp;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.DraftSeen;
import dapple.draft.Drafts;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.DailyTimer;
import dapple.rig.Gear;
import dapple.rig.Hanging;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampTimer;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.CsvTable;
import dapple.testing.DraftedHomes;
import dapple.testing.DraftedHomes.Drafted;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A tube over a slab, in an enclosure of 1.20 × 0.60 × 0.70 m, and a draft of it. */
@PagesTest
class DeskPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private DraftedHomes drafted;

    @Autowired
    private Drafts drafts;

    @Autowired
    private Rigs rigs;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private Home home;
    private DraftPlace place;
    private long draftId;

    @BeforeEach
    void furnish() {
        Drafted at = drafted.lit();
        site = at.site();
        lead = at.lead();
        home = at.home();
        place = at.place();
        draftId = at.draft("Plan A", at.installed());
    }

    @Test
    void aDraftIsMadeFromWhatHangs() throws Exception {
        send(post(desk()).param("name", "Plan B").param("from", "installed")).andExpect(status().isFound());
        assertThat(named("Plan B").rig()).isEqualTo(draft().rig());
    }

    @Test
    void theDraftsComeAsAFileWithWhatTheyWouldGive() throws Exception {
        see(desk(), containsString("href=\"" + desk() + ".csv\""));
        CsvTable table =
                CsvTable.of(send(get(desk() + ".csv")).andReturn().getResponse().getContentAsByteArray());
        assertThat(table.rows()).singleElement().satisfies(row -> {
            assertThat(row).containsEntry("Name", "Plan A").containsEntry("Made by", lead.fullName());
            assertThat(row).containsEntry("Installed", "no").containsEntry("Closed at", "");
            assertThat(row.get("Predicted, basking places")).isNotEmpty();
        });
    }

    @Test
    void aDraftIsMadeFromNothing() throws Exception {
        send(post(desk()).param("name", "Plan B").param("from", "empty")).andExpect(status().isFound());
        assertThat(named("Plan B").rig()).isEqualTo(DraftRig.empty());
    }

    @Test
    void aDraftIsMadeFromAnother() throws Exception {
        save(Map.of("lamps[0].zMetres", "0.60"));
        send(post(desk()).param("name", "Plan B").param("from", String.valueOf(draftId)))
                .andExpect(status().isFound());
        assertThat(named("Plan B").rig()).isEqualTo(draft().rig());
    }

    @Test
    void aNameIsGivenOnce() throws Exception {
        send(post(desk()).param("name", "plan a").param("from", "installed"))
                .andExpect(content().string(containsString("has a draft of this name")));
        assertThat(drafts.of(place)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"'',installed,Enter", "Plan B,17x,Choose what the draft is made from", "Plan B,999999,Choose what"})
    void whatCannotBeBegunComesBack(String name, String from, String message) throws Exception {
        send(post(desk()).param("name", name).param("from", from))
                .andExpect(content().string(containsString(message)));
        assertThat(drafts.of(place)).hasSize(1);
    }

    @Test
    void eachDraftIsListedWithItsChecks() throws Exception {
        see(desk(), allOf(containsString("Plan A"), containsString("what hangs now"), containsString("24 W")));
    }

    @Test
    void theDeskShowsTheFormAndWhatIsComputed() throws Exception {
        see(
                page(),
                allOf(
                        containsString("name=\"lamps[0].zMetres\""),
                        containsString("id=\"look\""),
                        containsString("Section, 0.30\u00a0m from the front"),
                        containsString("class=\"limit low\"")));
    }

    @Test
    void onlyTheComputedPartAnswersALook() throws Exception {
        send(with(post(page() + "/look"), Map.of()))
                .andExpect(status().isOk())
                .andExpect(content().string(allOf(containsString("id=\"look\""), not(containsString("<html")))));
    }

    @Test
    void aLookFollowsTheForm() throws Exception {
        String low = shown(Map.of("lamps[0].zMetres", "0.60"));
        assertThat(low).isNotEqualTo(shown(Map.of()));
    }

    @Test
    void aTimerThatChangesOverTheYearStaysWhileOtherFieldsAreEdited() throws Exception {
        LampTimer season = new HomeDayTimer(40, false, LocalTime.of(13, 0), 20, 0, 1440);
        time(season);
        see(page(), containsString("changes over the year and stays as it is"));
        save(Map.of("lamps[0].zMetres", "0.60"));
        assertThat(draft().rig().lamps().get(0).hanging().timer()).contains(season);
    }

    @Test
    void timesThatAreEnteredTakeThePlaceOfATimerThatChangesOverTheYear() throws Exception {
        time(new HomeDayTimer(40, false, LocalTime.of(13, 0), 20, 0, 1440));
        save(Map.of("lamps[0].on", "08:00", "lamps[0].off", "18:00"));
        assertThat(draft().rig().lamps().get(0).hanging().timer())
                .contains(new DailyTimer(LocalTime.of(8, 0), LocalTime.of(18, 0)));
    }

    @Test
    void gearIsDraftedToo() throws Exception {
        save(Map.of("lamps[0].control", "DIMMED", "lamps[0].voltagePercent", "70"));
        assertThat(draft().rig().lamps().get(0).hanging().gear()).isEqualTo(Gear.dimmedTo(0.7));
    }

    private void time(LampTimer timer) {
        DraftFacts draft = draft();
        DraftLamp first = draft.rig().lamps().get(0);
        Hanging hanging = first.hanging();
        DraftLamp timed = new DraftLamp(
                first.fittingId(),
                first.lamp(),
                new Hanging(hanging.place(), hanging.mount(), Optional.of(timer), hanging.circuitId()));
        DraftRig rig =
                new DraftRig(List.of(timed), draft.rig().covers(), draft.rig().furniture());
        drafts.change(place, new DraftSeen(draftId, draft.version()), draft.name(), rig, lead.personId());
    }

    @Test
    void aLookStoresNothing() throws Exception {
        DraftRig before = draft().rig();
        shown(Map.of("lamps[0].zMetres", "0.60"));
        assertThat(draft().rig()).isEqualTo(before);
    }

    @Test
    void anotherQuantityIsListedWithItsUnit() throws Exception {
        assertThat(shown(Map.of("quantity", "ILLUMINANCE")))
                .contains("illuminance")
                .doesNotContain("UVI</span>");
    }

    @Test
    void theChecksFollowTheDraft() throws Exception {
        assertThat(shown(Map.of())).contains("data-check=\"CEILING\"", "of 15 checks do not hold");
        assertThat(shown(Map.of("lamps[0].pick", ""))).doesNotContain("data-check");
    }

    @Test
    void whileSomethingIsMovedEachCheckComesOutAsItDoesAtRest() throws Exception {
        assertThat(outcomes(shown(Map.of("rough", "true"))))
                .hasSize(15)
                .containsExactlyElementsOf(outcomes(shown(Map.of())));
    }

    private static List<String> outcomes(String look) {
        return Pattern.compile("data-check=\"[A-Z]+\" data-outcome=\"[A-Z]+\"")
                .matcher(look)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    @Test
    void whileSomethingIsMovedChecksAreSaidToBeRough() throws Exception {
        assertThat(shown(Map.of("rough", "true"))).contains("rough while something moves");
        assertThat(shown(Map.of())).doesNotContain("rough while something moves");
    }

    @Test
    void whileSomethingIsMovedTheReasonsOfChecksStayBehind() throws Exception {
        assertThat(shown(Map.of("rough", "true"))).doesNotContain("Why, and by which source");
        assertThat(shown(Map.of())).contains("Why, and by which source");
    }

    @Test
    void wordsInASizeThatNobodySeesNeedNotCome() throws Exception {
        assertThat(shown(Map.of("rough", "true", "unseen", "narrow")))
                .contains("<g class=\"wide\"")
                .doesNotContain("<g class=\"narrow\"");
        assertThat(shown(Map.of("rough", "true"))).contains("<g class=\"wide\"", "<g class=\"narrow\"");
    }

    @Test
    void partsOfTheDrawingsAreNamedAsTheFormNamesThem() throws Exception {
        assertThat(shown(Map.of()))
                .contains(
                        "data-part=\"lamps[0]\"",
                        "data-part=\"furniture[0]\"",
                        "data-part=\"points[0]\"",
                        "data-plane=\"section\"",
                        "data-plane=\"plan\"",
                        "from the front, ")
                .contains("Arrow keys move it");
    }

    @Test
    void aPointIsTriedElsewhereAndNotStored() throws Exception {
        String there =
                shown(Map.of("points[0].xMetres", "0.10", "points[0].yMetres", "0.10", "points[0].zMetres", "0.05"));
        assertThat(there).isNotEqualTo(shown(Map.of())).contains("0.10\u00a0m from the left");
        see(page(), not(containsString("name=\"points[0].xMetres\" value=\"0.10\"")));
    }

    @ParameterizedTest
    @CsvSource({"left", "1e400", "NaN", "-99", "''"})
    void aPointThatIsNowhereStaysWhereItIs(String typed) throws Exception {
        act("look", Map.of("points[0].xMetres", typed))
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                containsString("Enter metres from -9.99 to 99.99"),
                                containsString("value=\"" + typed + "\""))));
    }

    /** The tube gives all of the light, so its part is the whole. */
    @Test
    void whatFallsAtAPlaceIsToldWithEachLampsPart() throws Exception {
        assertThat(at("0.6", "0.3", "0.5"))
                .contains("id=\"at\"", "0.60\u00a0m from the left", "100\u00a0%", "add up to the whole")
                .doesNotContain("<html");
    }

    @Test
    void ofPlacesOutsideNothingIsTold() throws Exception {
        assertThat(at("0.6", "0.3", "2")).contains("lies outside the enclosure");
    }

    @ParameterizedTest
    @CsvSource({"left", "1e400", "NaN", "''"})
    void aPlaceThatIsNoneIsAskedForAgain(String typed) throws Exception {
        assertThat(at(typed, "0.3", "0.5")).contains("Point at a place in a drawing");
    }

    /** Without scripts. */
    @Test
    void theWholePageTellsItToo() throws Exception {
        act("look", Map.of("x", "0.6", "y", "0.3", "z", "0.5"))
                .andExpect(content().string(containsString("add up to the whole")));
    }

    private String at(String x, String y, String z) throws Exception {
        return send(with(post(page() + "/at"), Map.of("x", x, "y", y, "z", z)))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void whatWasNotTouchedStaysExactly() throws Exception {
        DraftRig before = draft().rig();
        save(Map.of("name", "Plan C"));
        assertThat(named("Plan C").rig()).isEqualTo(before);
    }

    @Test
    void aLampIsMoved() throws Exception {
        save(Map.of("lamps[0].zMetres", "0,60"));
        assertThat(draft().rig()
                        .lamps()
                        .get(0)
                        .hanging()
                        .mount()
                        .orElseThrow()
                        .centre()
                        .z())
                .isEqualTo(0.6);
    }

    @Test
    void aStaleFormComesBackWithBothStates() throws Exception {
        Map<String, String> old = fields();
        save(Map.of("lamps[0].place", "theirs"));
        old.put("lamps[0].place", "mine");
        old.put("action", "save");
        send(params(post(page()), old))
                .andExpect(status().isConflict())
                .andExpect(content().string(allOf(containsString("theirs"), containsString("value=\"mine\""))));
    }

    @ParameterizedTest
    @CsvSource({
        "lamps[0].xMetres,left",
        "lamps[0].xMetres,1e400",
        "lamps[0].zMetres,NaN",
        "lamps[0].zMetres,''",
        "lamps[0].zMetres,-99",
        "lamps[0].lean,181",
        "lamps[0].on,25:00",
        "lamps[0].pick,model:999999",
        "lamps[0].pick,lamp:0",
        "lamps[0].place,''",
        "covers[0].layers,0",
        "covers[0].layers,x",
        "covers[0].wireMillimetres,-1",
        "covers[0].heightMetres,high",
        "furniture[0].widthMetres,0",
        "furniture[0].xMetres,NaN",
        "furniture[0].name,''",
        "name,''"
    })
    void whatCannotBeIsNotSaved(String field, String typed) throws Exception {
        DraftRig before = draft().rig();
        save(Map.of(field, typed))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("aria-invalid")));
        assertThat(draft()).extracting(DraftFacts::name, DraftFacts::rig).containsExactly("Plan A", before);
    }

    @Test
    void whatWasTypedIsKept() throws Exception {
        save(Map.of("lamps[0].xMetres", "to the left"))
                .andExpect(content().string(containsString("value=\"to the left\"")));
    }

    @Test
    void aLookAtWrongFieldsSaysWhatIsWrong() throws Exception {
        assertThat(shown(Map.of("lamps[0].xMetres", "left"))).contains("Nothing is computed");
    }

    @Test
    void aLampOfAnotherSiteIsNotThere() throws Exception {
        SiteFacts other = collection.site();
        LampFacts strange = collection.lamp(other, collection.lampModel(other, LampClass.TUBE_T5));
        save(Map.of("lamps[0].pick", "lamp:" + strange.id()))
                .andExpect(content().string(containsString("Choose the lamp.")));
    }

    @Test
    void aDraftOfAnotherSiteIsNotFound() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        pages.perform(get(page()).with(collection.as(stranger))).andExpect(status().isNotFound());
    }

    @Test
    void aDraftOfAnotherEnclosureIsNotFound() throws Exception {
        SpeciesFacts species = collection.species(site, lead, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        Home other = homes.unlit(site, lead, species);
        send(get("/enclosures/" + other.enclosureId() + "/desk/" + draftId)).andExpect(status().isNotFound());
    }

    @Test
    void aLampComes() throws Exception {
        LampFacts free = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        act("addLamp", Map.of("newLamp", "lamp:" + free.id()))
                .andExpect(content().string(containsString("name=\"lamps[1].xMetres\" value=\"0.60\"")));
    }

    @Test
    void aLampThatComesHasTheTimerOfItsKindAndSaysWhose() throws Exception {
        LampFacts free = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        act("addLamp", Map.of("newLamp", "lamp:" + free.id()))
                .andExpect(content()
                        .string(allOf(
                                containsString("name=\"lamps[1].on\" value=\"08:00\""),
                                containsString("name=\"lamps[1].off\" value=\"18:00\""),
                                containsString("Its timer is a proposal: the timer of "
                                        + rigs.at(site.id(), home.enclosureId(), clock.instant())
                                                .fittings()
                                                .get(0)
                                                .lamp()
                                                .tag()))));
    }

    @Test
    void aLampOfAnotherKindHasNoTimerOfATube() throws Exception {
        LampFacts free = collection.lamp(site, collection.lampModel(site, LampClass.TUNGSTEN_HALOGEN));
        act("addLamp", Map.of("newLamp", "lamp:" + free.id()))
                .andExpect(content().string(not(containsString("Its timer is a proposal"))));
    }

    @Test
    void aTimerThatChangesOverTheYearComesWithANewLampAndStays() throws Exception {
        LampTimer season = new HomeDayTimer(40, false, LocalTime.of(13, 0), 20, 0, 1440);
        time(season);
        LampFacts free = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        String added = act("addLamp", Map.of("newLamp", "lamp:" + free.id()))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(added).contains("name=\"lamps[1].season\" value=\"HOME_DAY 40.0 false 13:00 20 0 1440\"");
        save(Map.of(
                "lamps[1].pick", "lamp:" + free.id(),
                "lamps[1].place", "beside it",
                "lamps[1].season", "HOME_DAY 40.0 false 13:00 20 0 1440"));
        assertThat(draft().rig().lamps().get(1).hanging().timer()).contains(season);
        save(Map.of("lamps[1].place", "over there"));
        assertThat(draft().rig().lamps().get(1).hanging().timer()).contains(season);
    }

    @Test
    void aLampStillToBeBoughtIsPredictedToo() throws Exception {
        long model = rigs.at(site.id(), home.enclosureId(), clock.instant())
                .fittings()
                .get(0)
                .lamp()
                .model()
                .id();
        String before = shown(Map.of());
        String after = shown(Map.of(
                "lamps[1].pick", "model:" + model,
                "lamps[1].place", "second",
                "lamps[1].xMetres", "0.6",
                "lamps[1].yMetres", "0.4",
                "lamps[1].zMetres", "0.68",
                "lamps[1].lengthTo", "0"));
        assertThat(after).isNotEqualTo(before).contains("48 W").doesNotContain("Nothing is computed");
    }

    @Test
    void aLampHangsOnceInADraft() throws Exception {
        Map<String, String> twice = new LinkedHashMap<>();
        fields().forEach((name, typed) -> {
            if (name.startsWith("lamps[0]")) {
                twice.put(name.replace("[0]", "[1]"), typed);
            }
        });
        save(twice).andExpect(content().string(containsString("This lamp hangs in the draft already.")));
    }

    @Test
    void aPartIsTakenAway() throws Exception {
        act("remove furniture[0]", Map.of())
                .andExpect(content().string(not(containsString("name=\"furniture[0].name\""))));
    }

    @Test
    void aDiscardedDraftIsClosed() throws Exception {
        send(post(page() + "/discard").param("version", "0")).andExpect(redirectedUrl(desk() + "?discarded"));
        see(page(), allOf(containsString("Discarded"), not(containsString("value=\"save\""))));
    }

    @Test
    void aKeeperSeesAndDoesNotChange() throws Exception {
        SignedIn keeper = collection.person(site, Role.KEEPER);
        pages.perform(get(page()).with(collection.as(keeper)))
                .andExpect(content().string(not(containsString("value=\"save\""))));
        pages.perform(params(post(page()), fields()).with(csrf()).with(collection.as(keeper)))
                .andExpect(status().isForbidden());
    }

    private String desk() {
        return "/enclosures/" + home.enclosureId() + "/desk";
    }

    private String page() {
        return desk() + "/" + draftId;
    }

    private DraftFacts draft() {
        return drafts.get(place, draftId);
    }

    private DraftFacts named(String name) {
        return drafts.of(place).stream()
                .filter(draft -> draft.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Map<String, String> fields() {
        DeskForm form = DeskFields.of(draft(), Quantity.UV_INDEX);
        Map<String, String> fields = new LinkedHashMap<>(form.fields());
        List.of(form.lamps(), form.covers(), form.furniture())
                .forEach(rows ->
                        rows.forEach(row -> row.typed().forEach((field, typed) -> fields.put(row.name(field), typed))));
        return fields;
    }

    private String shown(Map<String, String> changed) throws Exception {
        return send(with(post(page() + "/look"), changed))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private ResultActions save(Map<String, String> changed) throws Exception {
        return act("save", changed);
    }

    private ResultActions act(String action, Map<String, String> changed) throws Exception {
        return send(with(post(page()), changed).param("action", action));
    }

    private MockHttpServletRequestBuilder with(MockHttpServletRequestBuilder request, Map<String, String> changed) {
        Map<String, String> all = fields();
        all.putAll(changed);
        return params(request, all);
    }

    private static MockHttpServletRequestBuilder params(
            MockHttpServletRequestBuilder request, Map<String, String> fields) {
        fields.forEach(request::param);
        return request;
    }

    private void see(String url, Matcher<String> what) throws Exception {
        send(get(url)).andExpect(status().isOk()).andExpect(content().string(what));
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return pages.perform(request.with(csrf()).with(collection.as(lead)));
    }
}
