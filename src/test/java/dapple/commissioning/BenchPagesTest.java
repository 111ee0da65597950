package dapple.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelChange;
import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A spot without a face: by the inverse square law 8.0 at 20 cm is 2.0 at 40 cm and 0.5 at 80 cm. */
@PagesTest
class BenchPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Lamps lamps;

    @Autowired
    private BenchRepository series;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private MeterFacts meter;
    private LampFacts lamp;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        meter = collection.meter(site);
        LampShape spot = new LampShape.Spot(40, Optional.empty());
        long model = lamps.addModel(
                site.id(),
                new LampModelChange(
                        "Spot " + meter.code(), LampClass.METAL_HALIDE, Optional.of(70.0), Optional.of(spot)));
        long id = lamps.add(
                site.id(), new NewLamp("B" + meter.code(), model, Optional.of(0.0), Optional.empty(), "shelf"));
        lamp = lamps.get(site.id(), id);
    }

    /** At the middle of the three distances the curve gives 2.0. */
    @Test
    void readingsByTheInverseSquareLawAreFitted() throws Exception {
        send(typed())
                .andExpect(content()
                        .string(allOf(
                                containsString("What the readings say"),
                                containsString("at 40 cm"),
                                containsString("<b>2.0</b>"))));
    }

    /** By hand: 2.0 · (40/d)² = 4.0 at 28.3 cm. */
    @Test
    void theHangingHeightFollowsFromTheCurve() throws Exception {
        Map<String, String> form = typed();
        form.put("wanted", "4.0");
        send(form).andExpect(content().string(containsString(">28 cm<")));
    }

    @Test
    void whatIsKeptIsTheLampsOwnMeasuredOutput() throws Exception {
        Map<String, String> form = typed();
        form.put("keep", "keep");
        send(form).andExpect(redirectedUrl("/lamps/" + lamp.id()));
        LampOutput output = lamps.get(site.id(), lamp.id()).measured().get(0);
        assertThat(output.mark()).isEqualTo(SourceMark.MEASURED);
        assertThat(output.quantity()).isEqualTo(Quantity.UV_INDEX);
        assertThat(output.reading() * output.distanceMetres() * output.distanceMetres())
                .isCloseTo(2.0 * 0.16, within(0.001));
    }

    @Test
    void theRawReadingsAreKeptWithIt() throws Exception {
        Map<String, String> form = typed();
        form.put("keep", "keep");
        send(form);
        UUID key = UUID.fromString(form.getOrDefault("key", ""));
        assertThat(series.findBySiteIdAndLampIdAndEntryKey(site.id(), lamp.id(), key))
                .isPresent();
    }

    @Test
    void theSameSeriesTwiceIsKeptOnce() throws Exception {
        Map<String, String> form = typed();
        form.put("keep", "keep");
        send(form);
        send(form).andExpect(redirectedUrl("/lamps/" + lamp.id()));
        assertThat(lamps.get(site.id(), lamp.id()).measured()).hasSize(1);
    }

    @Test
    void nothingIsKeptBeforeItIsAskedFor() throws Exception {
        send(typed());
        assertThat(lamps.get(site.id(), lamp.id()).measured()).isEmpty();
    }

    @Test
    void aReadingThatDoesNotFitIsNamed() throws Exception {
        Map<String, String> form = typed();
        form.put("distances[3]", "60");
        form.put("amounts[3]", "5");
        send(form).andExpect(content().string(containsString("no: look at this one")));
    }

    @Test
    void aCommaIsADecimalPoint() throws Exception {
        Map<String, String> form = typed();
        form.put("amounts[0]", "8,0");
        send(form).andExpect(content().string(containsString("<b>2.0</b>")));
    }

    @ParameterizedTest
    @CsvSource({
        "distances[1], abc, distances[1]-wrong",
        "distances[1], -40, distances[1]-wrong",
        "distances[1], 1e400, distances[1]-wrong",
        "distances[1], '', distances[1]-wrong",
        "amounts[2], NaN, amounts[2]-wrong",
        "amounts[2], -1, amounts[2]-wrong",
        "wanted, much, wanted-wrong",
        "measuredAt, yesterday, measuredAt-wrong",
        "measuredAt, 2999-01-01T10:00, measuredAt-wrong",
        "measuredAt, 2026-03-29T01:30, measuredAt-wrong",
        "measuredAt, 2025-10-26T01:30, measuredAt-wrong"
    })
    void whatCannotBeReadStaysWithAMessageBesideIt(String field, String text, String message) throws Exception {
        Map<String, String> form = typed();
        form.put(field, text);
        send(form)
                .andExpect(content()
                        .string(allOf(
                                containsString("id=\"" + message + "\""),
                                containsString("value=\"80\""),
                                containsString(text))));
    }

    @ParameterizedTest
    @CsvSource({"quantity, TASTE", "meterId, 999999999"})
    void whatCannotBeChosenHasAMessageBesideIt(String field, String text) throws Exception {
        Map<String, String> form = typed();
        form.put(field, text);
        send(form)
                .andExpect(content()
                        .string(allOf(containsString("id=\"" + field + "-wrong\""), containsString("value=\"80\""))));
    }

    @Test
    void oneDistanceIsTooFew() throws Exception {
        Map<String, String> form = typed();
        form.put("distances[1]", "20");
        form.put("distances[2]", "20");
        send(form).andExpect(content().string(containsString("two distances or more")));
    }

    @Test
    void aMeterOfAnotherSiteIsNotThere() throws Exception {
        Map<String, String> form = typed();
        form.put("meterId", String.valueOf(collection.meter(collection.site()).id()));
        send(form).andExpect(content().string(containsString("Choose the meter that read.")));
    }

    @Test
    void withoutAShapeNothingIsFitted() throws Exception {
        long model = lamps.addModel(
                site.id(),
                new LampModelChange("Bare " + meter.code(), LampClass.LED_SPOT, Optional.empty(), Optional.empty()));
        lamp = lamps.get(
                site.id(),
                lamps.add(
                        site.id(),
                        new NewLamp("C" + meter.code(), model, Optional.of(0.0), Optional.empty(), "shelf")));
        send(typed()).andExpect(content().string(containsString("The shape of this lamp")));
    }

    @Test
    void whoReadsOnABenchIsCautionedOfLightAndHeat() throws Exception {
        pages.perform(get("/lamps/" + lamp.id() + "/bench").with(collection.as(lead)))
                .andExpect(content()
                        .string(allOf(
                                containsString("data-caution=\"ULTRAVIOLET\""),
                                containsString("data-caution=\"HEAT\""))));
    }

    private Map<String, String> typed() {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("key", UUID.randomUUID().toString());
        form.put("quantity", "UV_INDEX");
        form.put("meterId", String.valueOf(meter.id()));
        form.put(
                "measuredAt",
                LocalDateTime.ofInstant(clock.instant().minus(Duration.ofMinutes(5)), site.timeZone())
                        .truncatedTo(ChronoUnit.MINUTES)
                        .toString());
        form.put("distances[0]", "20");
        form.put("amounts[0]", "8");
        form.put("distances[1]", "40");
        form.put("amounts[1]", "2");
        form.put("distances[2]", "80");
        form.put("amounts[2]", "0.5");
        form.put("wanted", "");
        return form;
    }

    private ResultActions send(Map<String, String> form) throws Exception {
        MockHttpServletRequestBuilder request = post("/lamps/" + lamp.id() + "/bench");
        form.forEach(request::param);
        return pages.perform(request.with(csrf()).with(collection.as(lead)));
    }
}
