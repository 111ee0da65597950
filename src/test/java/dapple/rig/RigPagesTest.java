package dapple.rig;

import static dapple.rig.RigExamples.hanging;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.Enclosures;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.geometry.Vec;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.FurnitureShape.Branch;
import dapple.rig.FurnitureShape.Post;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class RigPagesTest {
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
    private long enclosureId;
    private LampFacts lamp;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        long room = enclosures.addRoom(site.id(), "Dry room", 1);
        enclosureId = enclosures.add(site.id(), room, "E1", 1, Optional.empty());
        lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
    }

    @Test
    void anEmptyRigSaysSo() throws Exception {
        see("/rig")
                .andExpect(content()
                        .string(allOf(
                                containsString("Nothing is recorded that hangs or stands here."),
                                containsString("No change is recorded."))));
    }

    @Test
    void whatHangsIsShownWithTimerAndPosition() throws Exception {
        furnish(daysAgo(1));
        see("/rig")
                .andExpect(content()
                        .string(allOf(
                                containsString(lamp.tag()),
                                containsString("08:00 to 18:00"),
                                containsString("0.60\u00a0m right"))));
    }

    @Test
    void coverIsShownWithTheSourceOfItsFigures() throws Exception {
        furnish(daysAgo(1));
        see("/rig")
                .andExpect(content()
                        .string(allOf(
                                containsString("wires of 0.25\u00a0mm every 2.50\u00a0mm"),
                                containsString("measured here: with and without, one meter"),
                                containsString("UV index 90\u00a0%"))));
    }

    @Test
    void furnitureIsShownWithItsShape() throws Exception {
        furnish(daysAgo(1));
        see("/rig")
                .andExpect(content()
                        .string(allOf(
                                containsString("upright cylinder, height 0.30\u00a0m"),
                                containsString("branch, radius 0.02\u00a0m"))));
    }

    @Test
    void whatAPredictionDoesNotKnowIsSaid() throws Exception {
        Hanging nowhere = new Hanging("spot", Optional.empty(), Optional.empty(), Optional.empty());
        changing.make(entry(daysAgo(1)), new LampStep.Fit(lamp.id(), nowhere));
        see("/rig").andExpect(content().string(containsString(lamp.tag() + ": no position, measured only.")));
    }

    @Test
    void changesSayWhoRecordedThemAndWhetherLate() throws Exception {
        furnish(daysAgo(5));
        see("/rig")
                .andExpect(content()
                        .string(allOf(
                                containsString("first set up"),
                                containsString(lead.fullName()),
                                containsString("recorded more than a day later"))));
    }

    @Test
    void theFirstSetUpNamesWhatWasFound() throws Exception {
        furnish(daysAgo(5));
        assertThat(log()).containsPattern("first set up in: " + lamp.tag() + "; .*branch; stump");
    }

    @Test
    void aSwapNamesBothLamps() throws Exception {
        furnish(daysAgo(5));
        LampFacts fresh = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        change(new LampStep.Swap(rig().fittings().get(0).id(), fresh.id(), Optional.empty()));
        assertThat(log()).contains("lamp swapped in: " + fresh.tag() + " out: " + lamp.tag());
    }

    @Test
    void aTimerNamesItsLamp() throws Exception {
        furnish(daysAgo(5));
        change(new LampStep.SetTimer(rig().fittings().get(0).id(), Optional.empty(), Optional.empty()));
        assertThat(log()).contains("timer changed is changed: " + lamp.tag() + " for a test");
    }

    @Test
    void aCoverIsNamedWithTheLayersThatItHasThen() throws Exception {
        changing.make(entry(daysAgo(5)), new CoverStep.Put(RigExamples.mesh(Optional.of(0.85))));
        String name = rig().covers().get(0).cover().name();
        change(new CoverStep.SetLayers(rig().covers().get(0).id(), 2));
        assertThat(log()).contains("cover changed is changed: " + name + ", 2 layers");
        assertThat(log()).contains("cover changed in: " + name + ", one layer");
    }

    @Test
    void furnitureThatWasTakenAwayIsNamed() throws Exception {
        furnish(daysAgo(5));
        long stump = rig().furniture().stream()
                .filter(item -> item.furniture().name().equals("stump"))
                .findFirst()
                .orElseThrow()
                .id();
        change(new FurnitureStep.Remove(stump));
        assertThat(log()).contains("furniture changed out: stump for a test");
    }

    private Rig rig() {
        return rigs.at(site.id(), enclosureId, clock.instant());
    }

    private void change(RigStep step) {
        changing.make(entry(daysAgo(1)), step);
    }

    /** The words of the changes. */
    private String log() throws Exception {
        String page = see("/rig").andReturn().getResponse().getContentAsString();
        return page.substring(page.lastIndexOf("<tbody>"))
                .replaceAll("(?s)<[^>]*>|\\s+", " ")
                .replaceAll(" +", " ");
    }

    @Test
    void olderChangesAreOnAnotherPage() throws Exception {
        for (int count = 0; count <= Rigs.PAGE; count++) {
            changing.make(entry(daysAgo(1)), new CoverStep.Put(RigExamples.sheet(0.9)));
        }
        see("/rig").andExpect(content().string(containsString("Page 1 of 2")));
        see("/rig?page=2").andExpect(content().string(containsString("Page 2 of 2")));
        see("/rig?page=99").andExpect(content().string(containsString("Page 2 of 2")));
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"KEEPER", "VET", "INSPECTOR", "ADMINISTRATOR"})
    void whoMayNotChangeRigsIsOfferedNoChange(Role role) throws Exception {
        furnish(daysAgo(1));
        lead = collection.person(site, role);
        see("/rig").andExpect(content().string(allOf(containsString(lamp.tag()), not(containsString("/rig/lamps/")))));
    }

    @Test
    void theSceneOfAnEmptyRigIsDark() throws Exception {
        see("/scene.json")
                .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_JSON))
                .andExpect(content().string(containsString("\"lamps\":[]")));
    }

    @Test
    void theSceneCanBeThatOfAnyDay() throws Exception {
        furnish(daysAgo(2));
        see("/scene.json").andExpect(content().string(containsString("\"id\":\"" + lamp.tag() + "\"")));
        see("/scene.json?at=" + daysAgo(3)).andExpect(content().string(containsString("\"lamps\":[]")));
    }

    @Test
    void aSceneOfNoDayIsRefused() throws Exception {
        assertThat(see("/scene.json?at=yesterday").andReturn().getResponse().getStatus())
                .isEqualTo(400);
    }

    @Test
    void anotherSitesRigIsNotFound() throws Exception {
        lead = collection.person(collection.site(), Role.LIGHTING_LEAD);
        see("/rig").andExpect(status().isNotFound());
        see("/scene.json").andExpect(status().isNotFound());
    }

    /** A lamp, a mesh and a sheet, a post and a branch. */
    private void furnish(Instant at) {
        FirstRig found = new FirstRig(
                List.of(new LampStep.Fit(lamp.id(), hanging("basking tube"))),
                List.of(RigExamples.mesh(Optional.of(0.85)), RigExamples.sheet(0.9)),
                List.of(
                        new Furniture("stump", new Post(new Vec(0.2, 0.2, 0), 0.3, 0.05), true),
                        new Furniture("branch", new Branch(new Vec(0, 0, 0.2), new Vec(1, 0, 0.4), 0.02), false)));
        changing.setUpFirst(entry(at), found);
    }

    private RigEntry entry(Instant at) {
        return new RigEntry(
                site.id(), enclosureId, at, "for a test", lead.personId(), UUID.randomUUID(), Optional.empty());
    }

    private Instant daysAgo(int days) {
        return clock.instant().minus(Duration.ofDays(days));
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get("/enclosures/" + enclosureId + path).with(collection.as(lead)));
    }
}
