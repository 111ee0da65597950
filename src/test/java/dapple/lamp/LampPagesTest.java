package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@PagesTest
class LampPagesTest {
    private static final Map<String, String> MEASURED = Map.of(
            "quantity", "UV_INDEX",
            "reading", "2.4",
            "distanceMetres", "0.3",
            "uncertaintyPercent", "10",
            "measuredAt", "2026-03-02T10:00",
            "source", "meter M1, on the bench");

    @Autowired
    private TestCollection collection;

    @Autowired
    private LampMeasuring measuring;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Lamps lamps;

    private SiteFacts site;
    private SignedIn lead;
    private Asking asking;
    private LampModelFacts model;
    private LampFacts lamp;
    private String page;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        asking = new Asking(pages, collection.as(lead));
        model = collection.lampModel(site, LampClass.TUBE_T5);
        lamp = collection.lamp(site, model);
        page = "/lamps/" + lamp.id();
    }

    @Test
    void anEmptySiteIsToldToAddAModelFirst() throws Exception {
        SignedIn other = collection.person(collection.site(), Role.LIGHTING_LEAD);
        pages.perform(get("/lamps/new").with(collection.as(other)))
                .andExpect(content().string(containsString("There is no lamp model at this site yet.")));
    }

    @Test
    void aNewLampIsListed() throws Exception {
        asking.send("/lamps/new", state("L900")).andExpect(status().is3xxRedirection());
        asking.see("/lamps").andExpect(content().string(containsString("L900")));
    }

    @Test
    void aLampPostedTwiceIsStoredOnce() throws Exception {
        asking.send("/lamps/new", state("L900"));
        asking.send("/lamps/new", state("l900"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("A lamp, in use or not, has this tag already.")));
    }

    @ParameterizedTest
    @CsvSource({
        "tag, '', Enter something here",
        "tag, a tag that is much too long, Enter at most 20 characters.",
        "burnHours, many, 'Enter a number, for example 3.0'",
        "burnHours, 1e400, 'Enter a number, for example 3.0'",
        "burnHours, NaN, 'Enter a number, for example 3.0'",
        "burnHours, -1, Enter a number of at least 0.",
        "burnHours, 1000000, Enter a number of at most 999999.",
        "boughtOn, 2999-01-01, Enter a day that is not in the future.",
        "boughtOn, 1850-01-01, Enter a year from 1950",
        "boughtOn, 2026-02-30, 'Enter a day, for example 2027-03-31'"
    })
    void aWrongLampComesBackAsTyped(String field, String typed, String message) throws Exception {
        asking.send("/lamps/new", state("L900"), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)))
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"" + typed + "\"")));
    }

    @Test
    void anotherSitesModelIsNotFound() throws Exception {
        long foreign =
                collection.lampModel(collection.site(), LampClass.TUBE_T5).id();
        asking.send("/lamps/new", state("L900"), "modelId", String.valueOf(foreign))
                .andExpect(status().isNotFound());
    }

    @Test
    void aStaleLampComesBackWithBothStates() throws Exception {
        asking.send(page + "/edit", state("FIRST")).andExpect(redirectedUrl(page));
        asking.send(page + "/edit", state("SECOND"))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("<dd>FIRST</dd>")))
                .andExpect(content().string(containsString("value=\"SECOND\"")))
                .andExpect(content().string(containsString("name=\"version\" value=\"1\"")));
    }

    @Test
    void anUltravioletLampWithoutSpectrumSaysSo() throws Exception {
        asking.see(page)
                .andExpect(content().string(containsString("data-caution=\"SPECTRUM\"")))
                .andExpect(
                        content().string(containsString("ask the maker for a spectrum or a report before first use")));
        asking.see("/lamps").andExpect(content().string(containsString("spectrum not known")));
        asking.see("/lamps/new").andExpect(content().string(containsString(model.name() + " (spectrum not known)")));
    }

    @Test
    void aBrokenTubeIsCautionedOf() throws Exception {
        asking.see(page).andExpect(content().string(containsString("data-caution=\"MERCURY\"")));
    }

    @Test
    void aLampOfVisibleLightNeedsNoSpectrum() throws Exception {
        LampFacts led = collection.lamp(site, collection.lampModel(site, LampClass.LED_BAR));
        asking.see("/lamps/" + led.id())
                .andExpect(content().string(not(containsString("data-caution=\"SPECTRUM\""))))
                .andExpect(content().string(not(containsString("data-caution=\"MERCURY\""))))
                .andExpect(content().string(containsString("data-caution=\"MAINS\"")));
    }

    @Test
    void aMetalHalideLampKeepsItsGlass() throws Exception {
        LampFacts halide = collection.lamp(site, collection.lampModel(site, LampClass.METAL_HALIDE));
        asking.see("/lamps/" + halide.id()).andExpect(content().string(containsString("data-caution=\"OUTER_GLASS\"")));
    }

    @Test
    void whatWasMeasuredStandsWithWhoAndWhen() throws Exception {
        asking.send(page + "/outputs/new", MEASURED).andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content().string(containsString("2.4 UVI at 0.3 m, standard uncertainty 10")))
                .andExpect(content().string(containsString("measured here")))
                .andExpect(content().string(containsString(lead.fullName() + ": meter M1, on the bench")))
                .andExpect(content().string(containsString("2 Mar 2026, 10:00")))
                .andExpect(content().string(not(containsString("3 UVI at 0.3 m"))));
    }

    @Test
    void aMeasurementPostedTwiceIsStoredOnce() throws Exception {
        asking.send(page + "/outputs/new", MEASURED);
        asking.send(page + "/outputs/new", MEASURED).andExpect(redirectedUrl(page));
        asking.send(page + "/outputs/new", MEASURED, "reading", "9.9")
                .andExpect(content().string(containsString("Something else was measured of this lamp")))
                .andExpect(content().string(containsString("value=\"9.9\"")));
    }

    @ParameterizedTest
    @CsvSource({
        "quantity, HEAT",
        "quantity, AIR_TEMPERATURE",
        "reading, ''",
        "reading, NaN",
        "reading, 1e400",
        "reading, 0",
        "reading, -3",
        "distanceMetres, 0",
        "distanceMetres, 21",
        "uncertaintyPercent, ''",
        "uncertaintyPercent, 0",
        "measuredAt, ''",
        "measuredAt, 2999-01-01T10:00",
        "measuredAt, 2026-03-29T01:30",
        "measuredAt, 2025-10-26T01:30",
        "source, ''"
    })
    void aWrongMeasurementComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(page + "/outputs/new", MEASURED, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("Nothing was saved yet")));
    }

    @Test
    void aWithdrawnMeasurementStaysOnRecordWithItsReason() throws Exception {
        asking.send(page + "/outputs/new", MEASURED);
        String withdrawal =
                page + "/outputs/" + measuring.all(site.id(), lamp.id()).get(0).id() + "/withdrawal";
        asking.send(withdrawal, Map.of("reason", ""))
                .andExpect(content().string(containsString("id=\"reason-wrong\"")));
        asking.send(withdrawal, Map.of("reason", "distance misread")).andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content().string(containsString("distance misread")))
                .andExpect(content().string(containsString("3 UVI at 0.3 m")));
    }

    @Test
    void aMeasurementOfAnotherLampIsNotFound() throws Exception {
        asking.send(page + "/outputs/new", MEASURED);
        long output = measuring.all(site.id(), lamp.id()).get(0).id();
        LampFacts other = collection.lamp(site, model);
        asking.see("/lamps/" + other.id() + "/outputs/" + output + "/withdrawal")
                .andExpect(status().isNotFound());
    }

    @Test
    void aBrokenLampStaysOnRecordAndMayComeBack() throws Exception {
        asking.send(page + "/retirement", Map.of("why", "BROKEN")).andExpect(redirectedUrl(page));
        asking.see(page).andExpect(content().string(containsString(": broken")));
        asking.see("/lamps").andExpect(content().string(containsString("out of use since")));
        asking.send(page + "/return", Map.of()).andExpect(redirectedUrl(page));
        asking.see("/lamps").andExpect(content().string(not(containsString("out of use since"))));
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"KEEPER", "VET", "INSPECTOR"})
    void whoMayNotKeepLampsSeesThemAlone(Role role) throws Exception {
        SignedIn person = collection.person(site, role);
        for (String seen : new String[] {"/lamps", page, "/lamp-models", "/lamp-models/" + model.id()}) {
            pages.perform(get(seen).with(csrf()).with(collection.as(person)))
                    .andExpect(status().isOk())
                    .andExpect(content().string(not(containsString("/new"))))
                    .andExpect(content().string(not(containsString("/edit"))));
        }
    }

    @Test
    void aLampOfWhichNobodyKnowsHowLongItHasBurntIsEntered() throws Exception {
        asking.send("/lamps/new", state("L901"), "burnHours", "").andExpect(status().is3xxRedirection());
        LampFacts entered = lamps.all(site.id()).stream()
                .filter(lamp -> lamp.tag().equals("L901"))
                .findFirst()
                .orElseThrow();
        assertThat(entered.burnHoursAtEntry()).isEmpty();
        asking.see("/lamps/" + entered.id())
                .andExpect(content().string(containsString("Burn hours at entry</dt><dd>not known</dd>")));
        asking.see("/lamps/" + entered.id() + "/edit")
                .andExpect(content().string(containsString("name=\"burnHours\" value=\"\"")));
    }

    private Map<String, String> state(String tag) {
        return Map.of(
                "version", "0",
                "tag", tag,
                "modelId", String.valueOf(model.id()),
                "burnHours", "120",
                "boughtOn", "2026-01-05",
                "storePlace", "shelf 3");
    }
}
