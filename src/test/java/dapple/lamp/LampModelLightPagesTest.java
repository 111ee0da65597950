package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;

import dapple.people.Role;
import dapple.site.ReferenceSpectra;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** What the page of a lamp model draws and computes of its light. */
@PagesTest
class LampModelLightPagesTest {
    /** A point that gives a UV index of 3 at 0.3 m, ±20 % (k = 2): by the inverse square. */
    private static final Map<String, String> POINT = Map.of(
            "version", "0",
            "name", "A point",
            "lampClass", "METAL_HALIDE",
            "watts", "70",
            "shapeKind", "SPOT",
            "beamAngleDegrees", "40");

    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private Asking asking;

    @BeforeEach
    void furnish() {
        site = collection.site();
        asking = new Asking(pages, collection.as(collection.person(site, Role.LIGHTING_LEAD)));
    }

    private String page(LampClass lampClass) {
        return "/lamp-models/" + collection.lampModel(site, lampClass).id();
    }

    private String point() throws Exception {
        String page = page(LampClass.METAL_HALIDE);
        asking.send(page + "/edit", POINT);
        return page;
    }

    /** 0.3 m · √(3/8) = 18 cm, and with 3 less or more by a fifth 16 to 20 cm. */
    @Test
    void whereTheUvIndexFallsToEightIsSaidWithItsInterval() throws Exception {
        assertThat(words(point())).contains("lie in reach of any animal, at 18 cm ( 16 to 20 cm )");
    }

    /** Zone 2: 3.75 at 0.3 m · √0.8, 3.0 at 0.3 m, 1.1 at 0.3 m · √(3/1.1): by the inverse square. */
    @Test
    void eachZoneHasItsDistances() throws Exception {
        assertThat(words(point()))
                .contains("UV zone 2, sunbeam method 27 cm UVI 3.75 24 to 29 cm 30 cm UVI 3.0 27 to 33 cm"
                        + " 50 cm UVI 1.1 44 to 54 cm");
    }

    @Test
    void theCurveIsDrawnWithTheStatedReadingAsADisc() throws Exception {
        assertThat(html(point()))
                .contains("class=\"disc\"")
                .contains(
                        "UV index, predicted: 27.0 UVI at 10 cm, falling to 0.120 UVI at 150 cm. Stated: 3 UVI at 0.3 m.");
    }

    @Test
    void whatCannotBeDrawnSaysWhatIsMissing() throws Exception {
        String page = point();
        asking.send(page + "/outputs/UV_INDEX/removal", Map.of("version", "1"));
        asking.see(page)
                .andExpect(content().string(containsString("State its UV index or its illuminance, and its shape")))
                .andExpect(content().string(not(containsString("class=\"limit\""))));
    }

    @Test
    void whatIsPredictedSaysThatItIsNotMeasured() throws Exception {
        asking.see(point())
                .andExpect(content().string(containsString("Predicted is not measured: read at the animal")));
    }

    /** 70 % of the voltage, 2900 K: 30 % of the light, 57 % of the power, 2500 K; from the exponents, by hand. */
    @Test
    void aFilamentShowsWhatADimmerDoes() throws Exception {
        assertThat(words(page(LampClass.TUNGSTEN_HALOGEN))).contains("70 % 30 % 57 % 2,500 K");
    }

    /** The share from 780 to 1400 nm of a black body at 2900 K: 37.7 %, between the published 37.45 % (2856 K) and 40.1 % (3200 K). */
    @Test
    void aFilamentShowsItsFractionsBesideTheSuns() throws Exception {
        assertThat(words(page(LampClass.TUNGSTEN_HALOGEN)))
                .containsPattern("100 % 100 % 100 % 2,900 K 0\\.14\\d % [0-9.]+ % 37\\.[89] %")
                .contains("32.5 %");
    }

    @Test
    void carbonIsNotDimmedByTheRuleOfTungsten() throws Exception {
        assertThat(words(page(LampClass.CARBON_FILAMENT)))
                .contains("What a dimmer does to carbon is not known here.")
                .doesNotContain("70 %");
    }

    @ParameterizedTest
    @CsvSource({"TUBE_T5", "MERCURY_VAPOUR", "METAL_HALIDE", "LED_SPOT", "INFRARED_EMITTER"})
    void whatIsNoFilamentAloneHasNoSuchTable(LampClass lampClass) throws Exception {
        asking.see(page(lampClass)).andExpect(content().string(not(containsString("Fractions of its filament"))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ultraviolet, 280 to 400 nm, lamp and sun both at a UV index of 1",
                "The whole, 280 to 2500 nm, lamp and sun each 1 at its maximum",
                "The lamp is a line, only where it was measured, the sun an area",
                "mW/(m²·nm)"
            })
    void aSpectrumIsDrawnOverTheSuns(String words) throws Exception {
        assertThat(html(withSpectrum(sun()))).contains(words);
    }

    /** The sun as a lamp: each lies on the other, so that the line is a part of the outline of the area. */
    @Test
    void theSunAsALampIsTheSun() throws Exception {
        String html = html(withSpectrum(sun()));
        String line = first(html, "class=\"lamp\" d=\"M54 250");
        assertThat(line).hasSizeGreaterThan(100);
        assertThat(first(html, "class=\"sun\" d=\"M54 250")).contains(line.substring(20, line.length() / 2));
    }

    @Test
    void aSpectrumWithoutUltravioletIsComparedByItsMaximumAlone() throws Exception {
        assertThat(html(withSpectrum("380,0\n550,1\n780,0")))
                .contains("The whole, 280 to 780 nm")
                .doesNotContain("at a UV index of 1");
    }

    @Test
    void aDarkSpectrumIsNotDrawn() throws Exception {
        assertThat(html(withSpectrum("280,0\n800,0"))).doesNotContain("class=\"sun\" d=\"M5");
    }

    private static String first(String html, String start) {
        int from = html.indexOf(start) + start.length();
        return html.substring(from, html.indexOf('"', from));
    }

    private String withSpectrum(String text) throws Exception {
        String page = page(LampClass.TUBE_T5);
        asking.send(page + "/spectrum", Map.of("version", "0", "source", "for a test", "content", text));
        return page;
    }

    private static String sun() {
        return ReferenceSpectra.sun("global_tilt_W_m2_nm").samples().stream()
                .map(sample -> sample.wavelengthNanometres() + "," + sample.wattsPerSquareMetrePerNanometre())
                .collect(Collectors.joining("\n"));
    }

    private String html(String page) throws Exception {
        return asking.see(page).andReturn().getResponse().getContentAsString();
    }

    /** What is read, without marks of the page. */
    private String words(String page) throws Exception {
        return html(page).replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
}
