package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.draft.DraftRig;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.Outlook;
import dapple.rig.RigScene;
import dapple.testing.DraftedHomes;
import dapple.testing.DraftedHomes.Drafted;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A draft of what hangs: a tube 0.43 m over P1, above a mesh. */
@PagesTest
class SolvePagesTest {
    /** The solver's own 0.05 %, and as much for the prediction, which is integrated more coarsely. */
    private static final double NEAR = 0.006;

    private static final Pattern HEIGHT = Pattern.compile("name=\"zMetres\" value=\"([0-9.]+)\"");

    @Autowired
    private DraftedHomes homes;

    @Autowired
    private TestCollection collection;

    @Autowired
    private EnclosureScenes scenes;

    @Autowired
    private Outlook outlook;

    @Autowired
    private dapple.draft.Drafts drafts;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private Drafted at;
    private long draftId;

    @BeforeEach
    void furnish() {
        at = homes.lit();
        draftId = at.draft("Plan A", at.installed());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.2, 2.5})
    void theHeightThatIsTakenGivesWhatWasWanted(double wanted) throws Exception {
        String page = body(ask(height(String.valueOf(wanted))));
        take("part", "0", "zMetres", solved(page)).andExpect(redirectedUrl(page() + "?saved"));
        assertThat(uvIndexAtP1()).isCloseTo(wanted, within(NEAR * wanted));
    }

    @Test
    void whatAHeightDoesStandsBesideIt() throws Exception {
        assertThat(body(ask(height("1.2"))))
                .contains("P1", "P2", "P3", "P4", "In the draft now", "the highest UV index in reach");
    }

    @Test
    void whereNoHeightHasItTheLeastAndTheMostAreSaid() throws Exception {
        assertThat(body(ask(height("900"))))
                .contains("At no height", "The least that was found", "The most that was found")
                .doesNotContain("name=\"zMetres\" value=\"0");
    }

    @Test
    void aPlaceMayBeTyped() throws Exception {
        assertThat(body(ask(Map.of(
                        "ask",
                        "HEIGHT",
                        "lamp",
                        "0",
                        "point",
                        "",
                        "xMetres",
                        "0,6",
                        "yMetres",
                        "0.3",
                        "zMetres",
                        "0.30",
                        "quantity",
                        "UV_INDEX",
                        "wanted",
                        "1.5"))))
                .contains("m above the floor</h3>");
    }

    @Test
    void aPlaceInFurnitureIsSaid() throws Exception {
        assertThat(body(ask(Map.of(
                        "ask",
                        "HEIGHT",
                        "lamp",
                        "0",
                        "point",
                        "",
                        "xMetres",
                        "0.6",
                        "yMetres",
                        "0.3",
                        "zMetres",
                        "0.10",
                        "quantity",
                        "UV_INDEX",
                        "wanted",
                        "1.5"))))
                .contains("lies in a piece of furniture");
    }

    @ParameterizedTest
    @CsvSource({
        "wanted,much,Enter a number",
        "wanted,1e400,Enter a number",
        "wanted,NaN,Enter a number",
        "wanted,-1,at least 0.01",
        "wanted,'',Enter something here",
        "lamp,7,Choose from the list",
        "lamp,x,Enter a whole number",
        "point,999999,Choose from the list",
        "point,'',Choose a point",
        "quantity,HEAT,Choose from the list"
    })
    void whatCannotBeAskedComesBack(String field, String typed, String message) throws Exception {
        Map<String, String> asked = height("1.2");
        asked.put(field, typed);
        assertThat(body(ask(asked))).contains(message).contains("aria-invalid").doesNotContain(">Answer<");
    }

    @Test
    void aQuantityThatIsNotPredictedIsSaid() throws Exception {
        Map<String, String> asked = height("100");
        asked.put("quantity", "IR_A");
        assertThat(body(ask(asked))).contains("This quantity is not predicted for the draft");
    }

    /** Square holes of 2.25 mm every 2.5 mm let 0.9² = 81 % of what falls straight through: less at a slant. */
    @Test
    void eachNumberOfLayersIsListed() throws Exception {
        assertThat(body(ask(layers("0.5", "2"))))
                .contains(
                        "best in the band", "Take it away", "Take 6 layers", "<span class=\"label wraps\">now</span>");
    }

    @Test
    void theLayersThatAreTakenAreInTheDraft() throws Exception {
        take("part", "0", "layers", "3").andExpect(redirectedUrl(page() + "?saved"));
        assertThat(rig().covers().get(0).cover().layers()).isEqualTo(3);
    }

    @Test
    void noLayersTakeTheCoverAway() throws Exception {
        take("part", "0", "layers", "0");
        assertThat(rig().covers()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"low,x,Enter a number", "high,NaN,Enter a number", "high,0.4,not below the first", "cover,4,Choose from"
    })
    void aBandThatCannotBeComesBack(String field, String typed, String message) throws Exception {
        Map<String, String> asked = layers("0.5", "2");
        asked.put(field, typed);
        assertThat(body(ask(asked))).contains(message).doesNotContain(">Answer<");
    }

    @Test
    void aLampLikeTheOldOneChangesLeast() throws Exception {
        LampFacts free =
                collection.lamp(at.site(), at.rig().fittings().get(0).lamp().model());
        assertThat(body(ask(Map.of("ask", "SWAP", "lamp", "0"))))
                .contains(free.tag() + ", ", "No quantity changes by more than a tenth", "data-caution=\"MERCURY\"");
    }

    @Test
    void theLampThatIsTakenHangsWhereTheOldOneDid() throws Exception {
        LampFacts free = collection.lamp(at.site(), collection.lampModel(at.site(), LampClass.TUBE_T5));
        take("part", "0", "pick", "lamp:" + free.id(), "turned", "AS_BEFORE");
        assertThat(rig().lamps().get(0).hanging())
                .isEqualTo(at.installed().lamps().get(0).hanging());
        assertThat(PickText.of(rig().lamps().get(0).lamp())).isEqualTo("lamp:" + free.id());
    }

    @ParameterizedTest
    @CsvSource({
        "0,zMetres,high",
        "0,zMetres,NaN",
        "0,zMetres,1e400",
        "0,zMetres,-99",
        "9,zMetres,0.5",
        "-1,zMetres,0.5",
        "0,layers,-1",
        "4,layers,2",
        "0,pick,lamp:0",
        "0,pick,model:x",
        "0,place,0.5"
    })
    void whatIsNoAnswerIsNotTaken(String part, String field, String typed) throws Exception {
        DraftRig before = rig();
        take("part", part, field, typed).andExpect(status().isBadRequest());
        assertThat(rig()).isEqualTo(before);
    }

    @Test
    void anAnswerToAnOlderDraftIsNotTaken() throws Exception {
        drafts.change(
                at.place(),
                at.seen(draftId),
                "Plan B",
                DraftRig.empty(),
                at.lead().personId());
        send(post(page() + "/solving").param("version", "0").param("part", "0").param("zMetres", "0.5"))
                .andExpect(status().isBadRequest());
        drafts.change(
                at.place(),
                at.seen(draftId),
                "Plan B",
                at.installed(),
                at.lead().personId());
        send(post(page() + "/solving").param("version", "0").param("part", "0").param("zMetres", "0.5"))
                .andExpect(status().isConflict());
    }

    @Test
    void anotherSiteDoesNotFindIt() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        pages.perform(get(page() + "/solving").with(collection.as(stranger))).andExpect(status().isNotFound());
    }

    @Test
    void aKeeperAsksAndDoesNotTake() throws Exception {
        SignedIn keeper = collection.person(at.site(), Role.KEEPER);
        MockHttpServletRequestBuilder asked = get(page() + "/solving");
        height("1.2").forEach(asked::param);
        assertThat(body(pages.perform(asked.with(collection.as(keeper)))))
                .contains("m above the floor</h3>")
                .doesNotContain("Hang L");
    }

    private String page() {
        return at.desk() + "/" + draftId;
    }

    private DraftRig rig() {
        return at.draft(draftId).rig();
    }

    private Map<String, String> height(String wanted) {
        return new java.util.HashMap<>(
                Map.of("ask", "HEIGHT", "lamp", "0", "point", p1(), "quantity", "UV_INDEX", "wanted", wanted));
    }

    private Map<String, String> layers(String low, String high) {
        return new java.util.HashMap<>(
                Map.of("ask", "LAYERS", "cover", "0", "point", p1(), "quantity", "UV_INDEX", "low", low, "high", high));
    }

    private String p1() {
        return String.valueOf(at.home().basking().id());
    }

    private static String solved(String page) {
        Matcher height = HEIGHT.matcher(page);
        assertThat(height.find()).isTrue();
        return height.group(1);
    }

    private double uvIndexAtP1() {
        DraftRig rig = rig();
        var scene = scenes.at(
                        at.site().id(), at.home().enclosureId(), clock.instant(), Optional.empty(), Optional.empty())
                .under(RigScene.of(
                        rig.rig(at.home().enclosureId(), drafts.stock(at.site().id()), clock.instant())));
        return outlook.of(scene)
                .at(at.home().basking(), Quantity.UV_INDEX)
                .orElseThrow()
                .amount();
    }

    private ResultActions ask(Map<String, String> asked) throws Exception {
        MockHttpServletRequestBuilder request = get(page() + "/solving");
        asked.forEach(request::param);
        return send(request).andExpect(status().isOk());
    }

    private ResultActions take(String... fields) throws Exception {
        MockHttpServletRequestBuilder request = post(page() + "/solving")
                .param("version", String.valueOf(at.draft(draftId).version()));
        for (int field = 0; field < fields.length; field += 2) {
            request.param(fields[field], fields[field + 1]);
        }
        return send(request);
    }

    private static String body(ResultActions asked) throws Exception {
        return asked.andReturn().getResponse().getContentAsString();
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return pages.perform(request.with(csrf()).with(collection.as(at.lead())));
    }
}
