package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;

/** Several quantities asked at one point; what else a visit may leave on record. */
@PagesTest
class VisitQuantitiesPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Animals animals;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private final String visit = UUID.randomUUID().toString();
    private SiteFacts site;
    private SignedIn keeper;
    private SpeciesFacts species;
    private MeterFacts meter;
    private MeterFacts thermometer;
    private Home home;
    private PointFacts point;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER, Role.LIGHTING_LEAD);
        meter = collection.meter(site);
        thermometer = collection.meter(site, Quantity.SURFACE_TEMPERATURE);
        species = collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        home = collection.home(site, keeper, species);
        List<Quantity> asked = List.of(Quantity.UV_INDEX, Quantity.ILLUMINANCE, Quantity.SURFACE_TEMPERATURE);
        point = collection.point(site, home.enclosureId(), "P9", PointRole.BASKING, asked);
    }

    @Test
    void onlyWhatAMeterIsInUseForIsAskedInTurn() throws Exception {
        String reply = log(meter, "UV_INDEX", "4.5");
        see(reply).andExpect(content().string(not(containsString("quantity=ILLUMINANCE"))));
        see(path())
                .andExpect(content().string(containsString("?quantity=SURFACE_TEMPERATURE")))
                .andExpect(content().string(not(containsString("?quantity=ILLUMINANCE"))));
    }

    @Test
    void whatIsNotAskedForWantOfAMeterIsSaidAtTheEnd() throws Exception {
        see(path())
                .andExpect(content()
                        .string(allOf(containsString("no meter for it is in use"), containsString("P9, illuminance"))));
        collection.meter(site, Quantity.ILLUMINANCE);
        see(path()).andExpect(content().string(not(containsString("no meter for it is in use"))));
    }

    @Test
    void unweightedUvbIsKeptAsShownAndNotJudged() throws Exception {
        MeterFacts old = collection.meter(site, Quantity.UVB_IRRADIANCE);
        point = collection.point(site, home.enclosureId(), "P8", PointRole.BASKING, List.of(Quantity.UVB_IRRADIANCE));
        see(log(old, "UVB_IRRADIANCE", "153"))
                .andExpect(content()
                        .string(allOf(
                                containsString("stored, not judged"),
                                containsString("never converted to UV index"),
                                not(containsString("UVI</span>")))));
    }

    @Test
    void aTemperatureMayHaveAMinusSign() throws Exception {
        see(log(thermometer, "SURFACE_TEMPERATURE", "-2,5"))
                .andExpect(content().string(allOf(containsString("-2.5"), containsString("°C"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-41", "121", "warm", "NaN", "1e400", "20.123"})
    void whatIsNoTemperatureComesBackAsTyped(String typed) throws Exception {
        post(at(), entry(thermometer, "SURFACE_TEMPERATURE", typed))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"" + typed + "\"")))
                .andExpect(content().string(containsString("Enter the temperature in °C from -40 to 120")));
    }

    @Test
    void aMeterOfAnotherQuantityIsRefused() throws Exception {
        post(at(), entry(thermometer, "UV_INDEX", "3.4"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("This meter shows another quantity.")));
    }

    @Test
    void theMeterOfAQuantityIsAskedForAmongThoseThatFit() throws Exception {
        see(at() + "?quantity=SURFACE_TEMPERATURE")
                .andExpect(content().string(containsString("<option value=\"" + thermometer.id() + "\"")))
                .andExpect(content().string(not(containsString("<option value=\"" + meter.id() + "\""))));
    }

    @Test
    void aQuantityCanBeSkippedButNotTheUvIndex() throws Exception {
        see(at()).andExpect(content().string(not(containsString("value=\"SKIPPED\""))));
        see(at() + "?quantity=SURFACE_TEMPERATURE").andExpect(content().string(containsString("value=\"SKIPPED\"")));
    }

    @Test
    void whatIsSkippedLeavesTheRestOfThePointOpen() throws Exception {
        String key = UUID.randomUUID().toString();
        post(at() + "/unread", Map.of("key", key, "outcome", "SKIPPED", "quantity", "SURFACE_TEMPERATURE"));
        see(path()).andExpect(content().string(allOf(containsString("skipped"), containsString("not read yet"))));
    }

    @Test
    void aSensorHeldOtherwiseMakesContext() throws Exception {
        Map<String, String> entry = Map.of(
                "key", UUID.randomUUID().toString(),
                "meterId", String.valueOf(meter.id()),
                "quantity", "UV_INDEX",
                "amount", "9.1",
                "held", "LEVEL");
        see(target(post(at(), entry))).andExpect(content().string(containsString("Stored as context")));
    }

    @Test
    void aNoteIsKeptOnceHoweverOftenItIsSent() throws Exception {
        Map<String, String> note = Map.of("key", UUID.randomUUID().toString(), "note", "mesh is dusty");
        post(path() + "/notes", note).andExpect(redirectedUrl(path()));
        post(path() + "/notes", note).andExpect(redirectedUrl(path()));
        String page = see(path()).andReturn().getResponse().getContentAsString();
        assertThat(page.split("mesh is dusty", -1)).hasSize(2);
    }

    @Test
    void aNoteHasAtMost500Characters() throws Exception {
        post(path() + "/notes", Map.of("key", UUID.randomUUID().toString(), "note", "x".repeat(501)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Enter at most 500 characters.")));
    }

    @Test
    void aWithdrawnReadingSaysSo() throws Exception {
        String reply = log(meter, "UV_INDEX", "9.1");
        post(reply + "/withdrawal", Map.of("reason", "wrong enclosure")).andExpect(redirectedUrl(reply));
        see(reply)
                .andExpect(content().string(containsString("wrong enclosure")))
                .andExpect(content().string(not(containsString("Stop: over the ceiling"))));
    }

    @Test
    void aWithdrawalWantsAReason() throws Exception {
        post(log(meter, "UV_INDEX", "9.1") + "/withdrawal", Map.of("reason", " "))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"reason-wrong\"")));
    }

    @Test
    void anotherKeeperIsRefused() throws Exception {
        String reply = log(meter, "UV_INDEX", "9.1");
        keeper = collection.person(site, Role.KEEPER);
        see(reply).andExpect(content().string(not(containsString("/withdrawal"))));
        post(reply + "/withdrawal", Map.of("reason", "not mine")).andExpect(status().isConflict());
    }

    @Test
    void theHistoryShowsWhatWasWithdrawnAndWhatStands() throws Exception {
        String reply = log(meter, "UV_INDEX", "9.1");
        post(reply + "/withdrawal", Map.of("reason", "wrong enclosure"));
        log(thermometer, "SURFACE_TEMPERATURE", "38.5");
        see(history())
                .andExpect(content()
                        .string(allOf(
                                containsString("wrong enclosure"), containsString("38.5"), containsString("9.1"))));
        see(history() + "?quantity=SURFACE_TEMPERATURE&point=" + point.id())
                .andExpect(content().string(allOf(containsString("38.5"), not(containsString("wrong enclosure")))));
    }

    @Test
    void theHistoryOfAPointElsewhereIsNotFound() throws Exception {
        Home elsewhere = collection.home(site, keeper, species);
        see(history() + "?point=" + elsewhere.basking().id()).andExpect(status().isNotFound());
    }

    @Test
    void aPointSaysWhomItServes() throws Exception {
        post(serves(), Map.of("seen", "/", "species", String.valueOf(species.id())))
                .andExpect(redirectedUrlPattern("/enclosures/*/points/*"));
        assertThat(enclosures.point(site.id(), point.id()).served().speciesIds())
                .containsExactly(species.id());
    }

    @Test
    void aStaleFormOfWhomItServesComesBack() throws Exception {
        post(serves(), Map.of("seen", "/", "species", String.valueOf(species.id())));
        post(serves(), Map.of("seen", "/"))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("Changed meanwhile")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "999999", "all"})
    void aPointServesSpeciesOfItsSiteAlone(String id) throws Exception {
        post(serves(), Map.of("seen", "/", "species", id))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"species-wrong\"")));
    }

    @Test
    void aPointServesASingleAnimalUntilItHasLeft() throws Exception {
        String id = String.valueOf(home.animal().id());
        see(serves()).andExpect(content().string(containsString(home.animal().accessionNumber())));
        post(serves(), Map.of("seen", "/", "animals", id)).andExpect(redirectedUrlPattern("/enclosures/*/points/*"));
        String page = "/enclosures/" + home.enclosureId();
        see(page)
                .andExpect(
                        content().string(containsString("for " + home.animal().name())));
        Instant now = clock.instant();
        animals.move(
                site.id(), new Arrival(home.animal().id(), collection.emptyEnclosure(site), now, keeper.personId()));
        see(page).andExpect(content().string(containsString("serves nobody who lives here now")));
        see(serves()).andExpect(content().string(containsString("lives here no longer")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "999999", "all", "1e400"})
    void aPointServesAnimalsThatLiveThereAlone(String id) throws Exception {
        post(serves(), Map.of("seen", "/", "animals", id))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"animals-wrong\"")));
    }

    @Test
    void aPointServesNoAnimalOfAnotherEnclosure() throws Exception {
        Home elsewhere = collection.home(site, keeper, species);
        post(
                        serves(),
                        Map.of(
                                "seen",
                                "/",
                                "animals",
                                String.valueOf(elsewhere.animal().id())))
                .andExpect(content().string(containsString("id=\"animals-wrong\"")));
    }

    private String log(MeterFacts with, String quantity, String typed) throws Exception {
        return target(post(at(), entry(with, quantity, typed)));
    }

    private static String target(ResultActions sent) {
        return Optional.ofNullable(sent.andReturn().getResponse().getRedirectedUrl())
                .orElseThrow();
    }

    private static Map<String, String> entry(MeterFacts with, String quantity, String typed) {
        return Map.of(
                "key",
                UUID.randomUUID().toString(),
                "meterId",
                String.valueOf(with.id()),
                "quantity",
                quantity,
                "amount",
                typed);
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(collection.as(keeper)));
    }

    private ResultActions post(String path, Map<String, String> fields) throws Exception {
        MockHttpServletRequestBuilder request = MockMvcRequestBuilders.post(path);
        fields.forEach(request::param);
        return pages.perform(request.with(csrf()).with(collection.as(keeper)));
    }

    private String path() {
        return "/enclosures/" + home.enclosureId() + "/visits/" + visit;
    }

    private String at() {
        return path() + "/points/" + point.id();
    }

    private String history() {
        return "/enclosures/" + home.enclosureId() + "/readings";
    }

    private String serves() {
        return "/enclosures/" + home.enclosureId() + "/points/" + point.id() + "/serves";
    }
}
