package dapple.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.Enclosures;
import dapple.enclosure.Facing;
import dapple.enclosure.NewPoint;
import dapple.enclosure.Position;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.judging.PointRole;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.CoverStep;
import dapple.rig.LampStep;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.rig.RigStep;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A tube 0.6 m above a basking point, that gives a UV index of 3.0 at 0.3 m; the animal's zone has a ceiling of 8. */
@PagesTest
class PreviewPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private Home home;
    private long fittingId;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD, Role.SUPERVISOR);
        home = collection.home(
                site, lead, collection.species(site, lead, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
        place("B1", PointRole.BASKING, 0.3);
        place("N1", PointRole.NEAREST_REACHABLE, 0.35);
        LampFacts lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        make(new LampStep.Fit(lamp.id(), RigExamples.hanging("basking tube")));
        fittingId = rigs.at(site.id(), home.enclosureId(), clock.instant())
                .fittings()
                .get(0)
                .id();
    }

    @Test
    void showsNowAndThenWithTheRatioAndStoresNothing() throws Exception {
        send("/lamps/" + fittingId + "/move/preview", moved("0.7"))
                .andExpect(content()
                        .string(allOf(
                                containsString("What it will do"),
                                containsString("B1 basking"),
                                containsString("× "))));
        assertThat(rigs.changeCount(site.id(), home.enclosureId())).isEqualTo(1);
    }

    @Test
    void asksForTheLampInItsOwnWords() throws Exception {
        send("/lamps/" + fittingId + "/swap/preview", Map.of("at", "2026-11-20T10:00"))
                .andExpect(content().string(containsString("Choose the lamp.")));
    }

    @Test
    void keepsWhatWasTyped() throws Exception {
        send("/lamps/" + fittingId + "/move/preview", moved("0.7"))
                .andExpect(content()
                        .string(allOf(
                                containsString("name=\"zMetres\" value=\"0.70\"".replace("0.70", "0.7")),
                                containsString("value=\"because it was weak\""))));
    }

    @Test
    void aSecondChangeAtTheSameTimeIsRefusedBesideTheTimeAtOnce() throws Exception {
        Map<String, String> form = moved("0.7");
        send("/lamps/" + fittingId + "/move", form);
        long moved = rigs.at(site.id(), home.enclosureId(), clock.instant())
                .fittings()
                .get(0)
                .id();
        Map<String, String> again = moved("0.65");
        again.put("at", String.valueOf(form.get("at")));
        send("/lamps/" + moved + "/move/preview", again)
                .andExpect(content()
                        .string(allOf(
                                containsString("id=\"at-wrong\">This part is as it is since"),
                                containsString("value=\"0.65\""),
                                not(containsString("the change is later.")),
                                not(containsString("id=\"foreseen\"")))));
    }

    @Test
    void theFormSaysAfterWhatTimeTheChangeIs() throws Exception {
        pages.perform(get("/enclosures/" + home.enclosureId() + "/rig/lamps/" + fittingId + "/move")
                        .with(collection.as(lead)))
                .andExpect(content().string(containsString("the change is later.")));
    }

    @Test
    void theSameFormIsSavedAfterwards() throws Exception {
        Map<String, String> form = moved("0.7");
        send("/lamps/" + fittingId + "/move/preview", form);
        send("/lamps/" + fittingId + "/move", form).andExpect(status().is3xxRedirection());
        assertThat(rigs.changeCount(site.id(), home.enclosureId())).isEqualTo(2);
    }

    @Test
    void showsTheHighestAtTheNearestReachablePoint() throws Exception {
        send("/lamps/" + fittingId + "/move/preview", moved("0.7"))
                .andExpect(content().string(containsString("Highest at a nearest reachable point, UV index:")));
    }

    @Test
    void showsTheLimitsOfThoseWhoLiveThere() throws Exception {
        send("/lamps/" + fittingId + "/move/preview", moved("0.7"))
                .andExpect(content().string(containsString("ceiling 8.0: Pogona vitticeps")));
    }

    @Test
    void saysThatTheCeilingWouldBeReached() throws Exception {
        send("/lamps/" + fittingId + "/move/preview", moved("0.43"))
                .andExpect(content()
                        .string(allOf(
                                containsString("N1: UV index "),
                                containsString("at or over the ceiling of 8.0 for Pogona vitticeps."),
                                containsString("data-caution=\"VET\""))));
    }

    @Test
    void whatIsOverTheCeilingCanBeSavedAllTheSame() throws Exception {
        send("/lamps/" + fittingId + "/move", moved("0.43")).andExpect(status().is3xxRedirection());
    }

    @Test
    void isSilentOnTheCeilingFarBelowIt() throws Exception {
        send("/lamps/" + fittingId + "/move/preview", moved("0.9"))
                .andExpect(content().string(not(containsString("You can save this all the same"))));
    }

    @Test
    void saysWhichPointsHaveNoPosition() throws Exception {
        send("/lamps/" + fittingId + "/move/preview", moved("0.7"))
                .andExpect(content().string(containsString("Nothing is predicted at")));
    }

    @Test
    void withoutPositionItSaysThatNothingCanBePredicted() throws Exception {
        Map<String, String> form = dated();
        form.put("place", "basking tube");
        make(new LampStep.Move(fittingId, "basking tube", Optional.empty()));
        form.put("seen", String.valueOf(rigs.lastRecorded(site.id(), home.enclosureId())));
        long moved = rigs.at(site.id(), home.enclosureId(), clock.instant())
                .fittings()
                .get(0)
                .id();
        send("/lamps/" + moved + "/move/preview", form)
                .andExpect(content().string(containsString("Nothing can be predicted:")));
        send("/lamps/" + moved + "/move", form).andExpect(status().is3xxRedirection());
    }

    @Test
    void aCoverThatSaysNothingOfAQuantityLeavesItUnknown() throws Exception {
        make(new CoverStep.Put(RigExamples.sheet(0.9)));
        long cover = rigs.at(site.id(), home.enclosureId(), clock.instant())
                .covers()
                .get(0)
                .id();
        Map<String, String> form = dated();
        form.putAll(Map.of("kind", "SHEET", "name", "panel", "heightMetres", "0.8", "source", "none", "layers", "1"));
        send("/cover/" + cover + "/replacement/preview", form)
                .andExpect(content().string(containsString("panel: how much UV index passes is not known")));
    }

    @Test
    void aWrongFormIsNotForeseen() throws Exception {
        send("/lamps/" + fittingId + "/move/preview", moved("high"))
                .andExpect(content()
                        .string(allOf(containsString("id=\"zMetres-wrong\""), not(containsString("id=\"foreseen\"")))));
    }

    private void place(String code, PointRole role, double z) {
        Position position = new Position(0.6, 0.3, z);
        enclosures.addPoint(
                site.id(),
                home.enclosureId(),
                new NewPoint(code, "a place", role, Facing.STRONGEST, Optional.of(position)));
    }

    private void make(RigStep step) {
        Duration ago = step instanceof LampStep.Fit ? Duration.ofDays(2) : Duration.ofDays(1);
        changing.make(
                new RigEntry(
                        site.id(),
                        home.enclosureId(),
                        clock.instant().minus(ago),
                        "",
                        lead.personId(),
                        UUID.randomUUID(),
                        Optional.empty()),
                step);
    }

    private Map<String, String> moved(String height) {
        Map<String, String> form = dated();
        form.putAll(Map.of(
                "place", "basking tube", "xMetres", "0.6", "yMetres", "0.3", "zMetres", height, "lengthTo", "0"));
        return form;
    }

    private Map<String, String> dated() {
        LocalDateTime at = LocalDateTime.ofInstant(clock.instant().minus(Duration.ofHours(2)), site.timeZone());
        return new HashMap<>(Map.of(
                "key",
                UUID.randomUUID().toString(),
                "seen",
                String.valueOf(rigs.lastRecorded(site.id(), home.enclosureId())),
                "at",
                at.toString().substring(0, 16),
                "note",
                "because it was weak"));
    }

    private ResultActions send(String path, Map<String, String> form) throws Exception {
        MockHttpServletRequestBuilder request = post("/enclosures/" + home.enclosureId() + "/rig" + path)
                .with(csrf())
                .with(collection.as(lead));
        form.forEach(request::param);
        return pages.perform(request);
    }
}
