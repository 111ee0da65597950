package dapple.enclosure;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.site.TakenException;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@PagesTest
class ArrangingPagesTest {
    private static final Map<String, String> ROOM = Map.of("version", "0", "name", "Dry room", "order", "1");
    private static final Map<String, String> POINT = Map.of(
            "version", "0", "code", "P9", "place", "flat stone", "role", "SHADE", "facing", "LEVEL", "order", "9");

    private static final Map<String, String> OFF =
            Map.of("fromTime", "2026-01-01T10:00", "toTime", "2026-03-01T10:00", "reason", "Winter rest");

    @Autowired
    private PlanningOff planning;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn lead;
    private Asking asking;
    private Home home;
    private EnclosureFacts enclosure;
    private String edit;
    private String point;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        asking = new Asking(pages, collection.as(lead));
        home = collection.home(site, lead, collection.species(site, "Pogona vitticeps"));
        enclosure = enclosures.get(site.id(), home.enclosureId());
        edit = "/enclosures/" + enclosure.id() + "/edit";
        point = "/enclosures/" + enclosure.id() + "/points/" + home.basking().id();
    }

    @Test
    void anEmptySiteIsToldToAddARoom() throws Exception {
        SignedIn administrator = collection.person(collection.site(), Role.ADMINISTRATOR);
        pages.perform(get("/rooms").with(collection.as(administrator)))
                .andExpect(content().string(containsString("There is no room at this site yet.")));
    }

    @Test
    void aPointAsksForWhatIsTicked() throws Exception {
        asking.send(newPoint(), POINT, "quantities", "SURFACE_TEMPERATURE").andExpect(redirectedUrl(edit));
        Assertions.assertThat(enclosures.pointsOf(site.id(), enclosure.id()))
                .anySatisfy(asked ->
                        Assertions.assertThat(asked.quantities()).containsExactly(Quantity.SURFACE_TEMPERATURE));
    }

    @ParameterizedTest
    @CsvSource({"_quantities, on, Choose at least one.", "quantities, LOUDNESS, quantities-wrong"})
    void aPointAsksForSomethingThatExists(String field, String typed, String message) throws Exception {
        asking.send(newPoint(), POINT, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)));
    }

    @Test
    void aTimeOffIsListed() throws Exception {
        asking.send(off(), OFF).andExpect(redirectedUrl(off()));
        asking.see(off()).andExpect(content().string(containsString("Winter rest")));
    }

    @Test
    void timesOffNeverOverlap() throws Exception {
        asking.send(off(), OFF);
        asking.send(off(), OFF, "fromTime", "2026-02-01T10:00")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("planned off in a part of this time already")));
    }

    @Test
    void ofTwoTimesOffAtOnceOneIsRefused() {
        Instant begin = Instant.parse("2026-01-01T00:00:00Z");
        PlannedOffTime time = new PlannedOffTime(enclosure.id(), begin, Optional.empty(), "rest");
        List<Throwable> thrown = Together.run(
                () -> enclosures.planOff(site.id(), time, lead.personId()),
                () -> enclosures.planOff(site.id(), time, lead.personId()));
        Assertions.assertThat(thrown).hasSize(1).hasOnlyElementsOfType(TakenException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "fromTime, '', Enter a day and a time.",
        "fromTime, soon, fromTime-wrong",
        "fromTime, 2026-03-29T01:30, This time did not exist",
        "fromTime, 2026-10-25T01:30, This time came twice",
        "toTime, 2025-01-01T10:00, Enter an end after the beginning.",
        "toTime, never, toTime-wrong",
        "reason, ' ', reason-wrong"
    })
    void aWrongTimeOffComesBack(String field, String typed, String message) throws Exception {
        asking.send(off(), OFF, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)));
    }

    @Test
    void aTimeOffIsEndedOnce() throws Exception {
        enclosures.planOff(
                site.id(),
                new PlannedOffTime(enclosure.id(), Instant.parse("2026-01-01T00:00:00Z"), Optional.empty(), "rest"),
                lead.personId());
        long id = planning.of(site.id(), enclosure.id()).get(0).id();
        asking.send(off() + "/" + id + "/end", Map.of("endTime", "2026-01-05T10:00"))
                .andExpect(redirectedUrl(off()));
        Assertions.assertThat(enclosures.isPlannedOff(site.id(), enclosure.id(), Instant.parse("2026-01-06T00:00:00Z")))
                .isFalse();
        asking.send(off() + "/" + id + "/end", Map.of()).andExpect(status().isConflict());
    }

    private String off() {
        return "/enclosures/" + enclosure.id() + "/off";
    }

    @Test
    void aNewRoomIsListed() throws Exception {
        asking.send("/rooms/new", ROOM).andExpect(redirectedUrl("/rooms"));
        asking.see("/rooms").andExpect(content().string(containsString("Dry room")));
    }

    @Test
    void aRoomPostedTwiceIsStoredOnce() throws Exception {
        asking.send("/rooms/new", ROOM);
        asking.send("/rooms/new", ROOM)
                .andExpect(content().string(containsString("There is a room of this name already")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "two\nlines", "nul\u0000"})
    void aRoomWithoutANameComesBack(String name) throws Exception {
        asking.send("/rooms/new", ROOM, "name", name)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"name-wrong\"")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "1e400", "NaN", "-1", "1.5", "10000", "99999999999"})
    void aPlaceInTheWalkIsAWholeNumber(String order) throws Exception {
        asking.send("/rooms/new", ROOM, "order", order)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Enter a whole number from 0 to 9999")))
                .andExpect(content().string(containsString("value=\"" + order + "\"")));
    }

    @Test
    void aStaleRoomComesBackWithBothStates() throws Exception {
        String room = "/rooms/" + enclosure.roomId();
        asking.send(room, ROOM, "name", "Name of the first").andExpect(redirectedUrl("/rooms"));
        asking.send(room, ROOM, "name", "Name of the second")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("Name of the first, place 1 in the walk")))
                .andExpect(content().string(containsString("value=\"Name of the second\"")));
    }

    @Test
    void aNewEnclosureIsListedWithItsSize() throws Exception {
        asking.send(newEnclosure(), sized("1,20", "0.60", "0.5")).andExpect(status().is3xxRedirection());
        asking.see("/rooms").andExpect(content().string(containsString("1.20 × 0.60 × 0.50 m")));
    }

    @Test
    void anEnclosureWithoutASizeIsMeasuredOnly() throws Exception {
        asking.send(newEnclosure(), sized("", "", "")).andExpect(status().is3xxRedirection());
        asking.see("/rooms").andExpect(content().string(containsString("X77")));
    }

    @ParameterizedTest
    @CsvSource({
        "wide, 'Enter a number, for example 3.0'",
        "1e400, 'Enter a number, for example 3.0'",
        "NaN, 'Enter a number, for example 3.0'",
        "-1, Enter a number of at least 0.01.",
        "0, Enter a number of at least 0.01.",
        "100, Enter a number of at most 99.99.",
        "999999999999, Enter a number of at most 99.99.",
        "1.234, Enter a number with at most two decimals"
    })
    void aWrongWidthComesBackAsTyped(String width, String message) throws Exception {
        asking.send(newEnclosure(), sized(width, "1", "1"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)))
                .andExpect(content().string(containsString("value=\"" + width + "\"")))
                .andExpect(content().string(containsString("value=\"X77\"")));
    }

    @Test
    void frontAndReachAreToldOnThePagesAndInTheHistory() throws Exception {
        Map<String, String> said = new HashMap<>(state());
        said.putAll(Map.of("front", "MESH", "reach", "GROUND", "reachMetres", "0,25"));
        asking.send(edit, said).andExpect(redirectedUrl("/rooms"));
        String page = "/enclosures/" + enclosure.id();
        asking.see(page).andExpect(content().string(containsString("mesh front")));
        asking.see(page + "/residents")
                .andExpect(content().string(containsString("Reach, as stated of the enclosure:")));
        Asking inspecting = new Asking(pages, collection.as(collection.person(site, Role.INSPECTOR)));
        inspecting
                .see(page + "/history")
                .andExpect(content().string(containsString("on the floor and on what stands there")))
                .andExpect(content().string(containsString("How high they come, m")));
    }

    @ParameterizedTest
    @CsvSource({
        "front, CURTAIN, front-wrong",
        "reach, SWIMS, reach-wrong",
        "reach, GROUND, 'Enter how high it reaches from the ground, for example 0.30'",
        "reachMetres, 0.3, 'Choose how they come near, or leave the height empty.'",
        "reachMetres, high, reachMetres-wrong",
        "reachMetres, 1e400, reachMetres-wrong",
        "reachMetres, NaN, reachMetres-wrong",
        "reachMetres, -1, reachMetres-wrong",
        "reachMetres, 0, reachMetres-wrong",
        "reachMetres, 20.01, reachMetres-wrong"
    })
    void aWrongFrontOrReachComesBackWithAMessageAtTheField(String field, String typed, String message)
            throws Exception {
        asking.send(newEnclosure(), state(), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)))
                .andExpect(content().string(containsString("value=\"X77\"")));
    }

    @Test
    void halfASizeIsAskedFor() throws Exception {
        asking.send(newEnclosure(), sized("1", "", "1"))
                .andExpect(content().string(containsString("id=\"depthMetres-wrong\"")))
                .andExpect(content().string(containsString("Enter this too, or leave all three empty.")));
    }

    @Test
    void aLongCodeComesBackAsTyped() throws Exception {
        String code = "E".repeat(21);
        asking.send(newEnclosure(), state(), "code", code)
                .andExpect(content().string(containsString("Enter at most 20 characters.")))
                .andExpect(content().string(containsString(code)));
    }

    @Test
    void aCodeIsTakenOnce() throws Exception {
        asking.send(newEnclosure(), state(), "code", enclosure.code())
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("An enclosure, in use or not, has this code already.")));
    }

    @Test
    void aStaleEnclosureComesBackWithBothStates() throws Exception {
        asking.send(edit, state(), "code", "FIRST").andExpect(redirectedUrl("/rooms"));
        asking.send(edit, state(), "code", "SECOND")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("<dd>FIRST</dd>")))
                .andExpect(content().string(containsString("value=\"SECOND\"")))
                .andExpect(content().string(containsString("name=\"version\" value=\"1\"")));
    }

    @Test
    void anotherSitesRoomIsNotFound() throws Exception {
        long foreign = enclosures.addRoom(collection.site().id(), "Elsewhere", 1);
        asking.send(edit, state(), "roomId", String.valueOf(foreign)).andExpect(status().isNotFound());
    }

    @Test
    void anEnclosureWithAnAnimalStaysInUse() throws Exception {
        String refused = edit + "?lived";
        asking.see(edit).andExpect(content().string(not(containsString("Move the animal first."))));
        asking.send("/enclosures/" + enclosure.id() + "/retirement", Map.of()).andExpect(redirectedUrl(refused));
        asking.see(refused).andExpect(content().string(containsString("Move the animal first.")));
    }

    @Test
    void anEmptyEnclosureLeavesUseAndComesBack() throws Exception {
        long empty = enclosures.add(site.id(), enclosure.roomId(), "X1", 1, Optional.empty());
        asking.send("/enclosures/" + empty + "/retirement", Map.of()).andExpect(redirectedUrl("/rooms"));
        asking.see("/rooms").andExpect(content().string(containsString("out of use since")));
        asking.see("/enclosures/" + empty).andExpect(content().string(containsString("out of use since")));
        asking.send("/enclosures/" + empty + "/return", Map.of()).andExpect(redirectedUrl("/rooms"));
        asking.see("/rooms").andExpect(content().string(not(containsString("out of use since"))));
    }

    @Test
    void aNewPointIsListed() throws Exception {
        asking.send(newPoint(), POINT).andExpect(redirectedUrl(edit));
        asking.see(edit).andExpect(content().string(containsString("flat stone")));
    }

    @Test
    void aPointPostedTwiceIsStoredOnce() throws Exception {
        asking.send(newPoint(), POINT);
        asking.send(newPoint(), POINT).andExpect(content().string(containsString("A point of this enclosure")));
    }

    @ParameterizedTest
    @CsvSource({
        "code, ''",
        "code, longer than ten",
        "place, ''",
        "role, WINDOW",
        "facing, ''",
        "order, many",
        "xMetres, NaN",
        "yMetres, 1e400",
        "zMetres, -10"
    })
    void aWrongPointComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(newPoint(), POINT, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")));
    }

    @Test
    void halfAPositionIsAskedFor() throws Exception {
        asking.send(newPoint(), POINT, "xMetres", "0.5")
                .andExpect(content().string(containsString("id=\"yMetres-wrong\"")))
                .andExpect(content().string(containsString("id=\"zMetres-wrong\"")));
    }

    @Test
    void aStalePointComesBackWithBothStates() throws Exception {
        asking.send(point, POINT, "place", "where the first put it").andExpect(redirectedUrl(edit));
        asking.send(point, POINT, "place", "where the second put it")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("<dd>where the first put it</dd>")))
                .andExpect(content().string(containsString("value=\"where the second put it\"")));
    }

    @Test
    void aRetiredPointSaysSo() throws Exception {
        asking.send(point + "/retirement", Map.of()).andExpect(redirectedUrl(edit));
        asking.see(point).andExpect(content().string(containsString("retired ")));
        asking.send(point + "/return", Map.of()).andExpect(redirectedUrl(edit));
        asking.see(point).andExpect(content().string(not(containsString("<p class=\"quiet\">retired "))));
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"KEEPER", "VET", "INSPECTOR"})
    void whoMayNotArrangeSeesTheRoomsAlone(Role role) throws Exception {
        SignedIn person = collection.person(site, role);
        pages.perform(get("/rooms").with(collection.as(person)))
                .andExpect(content().string(not(containsString("/rooms/new"))))
                .andExpect(content().string(not(containsString("/edit"))));
    }

    private String newEnclosure() {
        return "/rooms/" + enclosure.roomId() + "/enclosures/new";
    }

    private String newPoint() {
        return "/enclosures/" + enclosure.id() + "/points/new";
    }

    private Map<String, String> state() {
        return sized("", "", "");
    }

    private Map<String, String> sized(String width, String depth, String height) {
        return Map.of(
                "version",
                "0",
                "roomId",
                String.valueOf(enclosure.roomId()),
                "code",
                "X77",
                "order",
                "1",
                "widthMetres",
                width,
                "depthMetres",
                depth,
                "heightMetres",
                height);
    }
}
