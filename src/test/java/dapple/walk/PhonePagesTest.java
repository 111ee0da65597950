package dapple.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@PagesTest
class PhonePagesTest {
    private static final String BEGINS = "<script type=\"application/json\" id=\"sheet\">";
    private static final String ENDS = "</script>";

    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private MockMvc pages;

    @Autowired
    private JsonMapper json;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private MeterFacts meter;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        meter = collection.meter(site);
        home = collection.home(
                site, keeper, collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
    }

    @Test
    void thePageCarriesEveryStepOfTheDoor() throws Exception {
        assertThat(steps().findValuesAsString("code")).containsExactly("P1", "P2", "P3", "P4");
    }

    @Test
    void itCarriesTheCeilingOfWhoLivesThere() throws Exception {
        assertThat(step(0).path("ceiling").asDouble()).isEqualTo(8.0);
    }

    @Test
    void itCarriesWhatIsExpectedByTheLastReadings() throws Exception {
        read(home.basking(), 3.0);
        read(home.basking(), 3.2);
        JsonNode expected = step(0).path("expected");
        assertThat(expected.path("low").asDouble()).isBetween(1.5, 2.5);
        assertThat(expected.path("high").asDouble()).isBetween(3.8, 5.5);
    }

    @Test
    void nothingIsExpectedWhereNothingIsKnown() throws Exception {
        assertThat(step(0).path("expected").isNull()).isTrue();
    }

    @Test
    void itTellsWhenAPointWasReadAndNeverWhatWasRead() throws Exception {
        read(home.basking(), 3.77);
        assertThat(step(0).path("lastRead").asString()).startsWith("Last read");
        assertThat(page(home.enclosureId())).doesNotContain("3.77");
    }

    @Test
    void itNamesTheMetersOfTheSite() throws Exception {
        JsonNode meters = sheet().path("meters");
        assertThat(meters.get(0).path("id").asLong()).isEqualTo(meter.id());
        assertThat(meters.get(0).path("notices").get(0).asString()).containsIgnoringCase("never calibrated");
    }

    @Test
    void anUncalibratedMeterCorrectsNothing() throws Exception {
        JsonNode factors = sheet().path("meters").get(0).path("factors");
        assertThat(factors).hasSize(1);
        assertThat(factors.get(0).path("factor").asDouble()).isEqualTo(1);
        assertThat(factors.get(0).path("upTo").isNull()).isTrue();
    }

    @Test
    void withoutSpectrumTheRuleOfThumbCounts() throws Exception {
        assertThat(sheet().path("stops").get(0).path("hazard").path("assumed").asBoolean())
                .isTrue();
    }

    @Test
    void withoutScriptItLeadsToThePlainPages() throws Exception {
        assertThat(page(home.enclosureId())).contains("href=\"/enclosures/" + home.enclosureId() + "/visit\"");
    }

    @Test
    void noNameEndsWhatThePageCarries() throws Exception {
        long room = enclosures.addRoom(site.id(), "</script><b>", 1);
        long enclosure = enclosures.add(site.id(), room, "X1", 1, Optional.empty());
        String carried = carried(page(enclosure));
        assertThat(json.readTree(carried).path("stops").get(0).path("room").asString())
                .isEqualTo("</script><b>");
    }

    @Test
    void anotherSitesDoorIsNotFound() throws Exception {
        SignedIn other = collection.person(collection.site(), Role.KEEPER);
        pages.perform(get("/enclosures/{id}/on-phone", home.enclosureId()).with(collection.as(other)))
                .andExpect(status().isNotFound());
    }

    @Test
    void whoLogsNoReadingsHasNoSuchPage() throws Exception {
        SignedIn inspector = collection.person(site, Role.INSPECTOR);
        pages.perform(get("/enclosures/{id}/on-phone", home.enclosureId()).with(collection.as(inspector)))
                .andExpect(status().isForbidden());
    }

    private void read(PointFacts point, double uvIndex) {
        logging.log(
                Visitor.of(keeper),
                new Entry(
                        UUID.randomUUID(),
                        new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id()),
                        meter.id(),
                        uvIndex,
                        clock.instant().minus(Duration.ofMinutes(5))));
    }

    private JsonNode step(int at) throws Exception {
        return steps().get(at);
    }

    private JsonNode steps() throws Exception {
        return sheet().path("stops").get(0).path("steps");
    }

    private JsonNode sheet() throws Exception {
        return json.readTree(carried(page(home.enclosureId())));
    }

    private static String carried(String page) {
        int begins = page.indexOf(BEGINS) + BEGINS.length();
        return page.substring(begins, page.indexOf(ENDS, begins));
    }

    private String page(long enclosureId) throws Exception {
        return pages.perform(get("/enclosures/{id}/on-phone", enclosureId).with(collection.as(keeper)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
