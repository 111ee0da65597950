package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.light.spectrum.BandShare;
import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.SpectrumEvaluation;
import dapple.light.spectrum.SpectrumSummary;
import dapple.site.ReferenceSpectra;
import dapple.testing.PagesTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.ResultActions;
import tools.jackson.databind.JsonNode;

@PagesTest
class SpectraPagesTest extends ProgramPages {
    @Test
    void answersTheExampleOfTheDocsAsTheCoreDoes() throws Exception {
        JsonNode answer = answer(example());
        SpectrumSummary summary = judged(example());
        assertThat(answer.path("version").intValue()).isEqualTo(1);
        assertThat(answer.path("uvi").doubleValue())
                .isPositive()
                .isEqualTo(summary.uvIndex().index());
        assertThat(answer.path("erythemal").doubleValue())
                .isEqualTo(summary.erythemal().wattsPerSquareMetre());
        assertThat(answer.path("vitaminD3").doubleValue()).isEqualTo(summary.vitaminD3WattsPerSquareMetre());
        assertThat(answer.path("actinic").doubleValue()).isEqualTo(summary.actinicWattsPerSquareMetre());
        assertThat(answer.path("illuminance").doubleValue()).isEqualTo(summary.illuminanceLux());
        assertThat(answer.path("total").doubleValue()).isEqualTo(summary.totalWattsPerSquareMetre());
        assertThat(answer.path("sedPerHour").doubleValue()).isEqualTo(summary.sedPerHour());
        assertThat(texts(answer.path("warnings"))).isEqualTo(summary.warnings());
    }

    @Test
    void answersTheExampleWithItsBands() throws Exception {
        JsonNode answer = answer(example());
        for (BandShare band : judged(example()).bands()) {
            String name = band.band().code();
            assertThat(answer.path("bands").path(name).doubleValue()).isEqualTo(band.wattsPerSquareMetre());
            assertThat(answer.path("shares").path(name).doubleValue()).isEqualTo(band.share());
            JsonNode ratio = answer.path("sun").path("ratios").path(name);
            assertThat(ratio.isNull() ? OptionalDouble.empty() : OptionalDouble.of(ratio.doubleValue()))
                    .isEqualTo(band.overSun());
        }
    }

    @Test
    void namesTheSunAndTheWavelengthsThatItIsComparedOver() throws Exception {
        JsonNode sun = answer("{'version':1,'samples':[[280,0],[800,1]]}").path("sun");
        assertThat(sun.path("name").stringValue()).isEqualTo("ASTM G173-03, global, 37° tilt");
        assertThat(sun.path("from").doubleValue()).isEqualTo(280);
        assertThat(sun.path("to").doubleValue()).isEqualTo(800);
        assertThat(sun.path("ratios").path("below290").isNull()).isTrue();
    }

    @Test
    void hasTheMembersOfTheDocsAndNoOthers() throws Exception {
        JsonNode answer = answer(example());
        String[] bands = {"uvc", "uvb", "uva", "visible", "irA", "irB", "below290"};
        assertThat(answer.propertyNames())
                .containsExactly(
                        "version",
                        "uvi",
                        "erythemal",
                        "vitaminD3",
                        "actinic",
                        "illuminance",
                        "total",
                        "bands",
                        "shares",
                        "sun",
                        "sedPerHour",
                        "keeperLimit",
                        "warnings");
        assertThat(answer.path("bands").propertyNames()).containsExactly(bands);
        assertThat(answer.path("shares").propertyNames()).containsExactly(bands);
        assertThat(answer.path("sun").path("ratios").propertyNames()).containsExactly(bands);
        assertThat(answer.path("keeperLimit").propertyNames())
                .containsExactly("minutes", "binding", "actinicMinutes", "uvaEyeMinutes");
    }

    /** The hazard weight is 0.5 at 254 nm and 0.00011 at 365 nm [icnirp2004]: 30 J/m² and 10,000 J/m² by hand. */
    @ParameterizedTest
    @CsvSource({
        "'[254,1]', 1, actinic, 1, ",
        "'[365,10]', 16.666666666666668, uvaEye, 454.54545454545456, 16.666666666666668",
        "'[365,1]', 166.66666666666666, uvaEye, , 166.66666666666666",
        "'[365,0.3]', , , ,",
        "'[600,1000]', , , ,"
    })
    void saysHowLongAKeeperMayStay(
            String line,
            @Nullable String minutes,
            @Nullable String binding,
            @Nullable String actinic,
            @Nullable String uvaEye)
            throws Exception {
        JsonNode limit = answer("{'version':1,'lines':[" + line + "]}").path("keeperLimit");
        expect(limit.path("minutes"), minutes);
        expect(limit.path("actinicMinutes"), actinic);
        expect(limit.path("uvaEyeMinutes"), uvaEye);
        assertThat(limit.path("binding").isNull() ? null : limit.path("binding").stringValue())
                .isEqualTo(binding);
    }

    private static void expect(JsonNode found, @Nullable String expected) {
        double rounding = 1e-9;
        if (expected == null) {
            assertThat(found.isNull()).isTrue();
        } else {
            assertThat(found.doubleValue()).isCloseTo(Double.parseDouble(expected), within(rounding));
        }
    }

    /** The table in {@code shared} as a program would post it: UV index 3.693, by another program. */
    @Test
    void judgesThePostedSun() throws Exception {
        String samples = ReferenceSpectra.sun("global_tilt_W_m2_nm").samples().stream()
                .map(sample -> String.format(
                        Locale.ROOT,
                        "[%s,%s]",
                        sample.wavelengthNanometres(),
                        sample.wattsPerSquareMetrePerNanometre()))
                .collect(Collectors.joining(",", "{'version':1,'samples':[", "]}"));
        JsonNode answer = answer(samples);
        assertThat(answer.path("uvi").doubleValue()).isCloseTo(3.693, within(0.0005));
        assertThat(answer.path("keeperLimit").path("binding").stringValue()).isEqualTo("uvaEye");
        assertThat(answer.path("sun").path("ratios").path("uvb").doubleValue()).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{'version':1,'samples':[]}", "{'version':1,'lines':[]}"})
    void nothingIsAnsweredWithNothing(String dark) throws Exception {
        JsonNode answer = answer(dark);
        assertThat(answer.path("uvi").doubleValue()).isZero();
        assertThat(answer.path("total").doubleValue()).isZero();
        assertThat(answer.path("keeperLimit").path("minutes").isNull()).isTrue();
    }

    @Test
    void minusNothingIsWrittenAsNothing() throws Exception {
        String answer = send("{\"version\":1,\"lines\":[[300,-0.0]]}")
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(answer).contains("\"uvi\":0.0").doesNotContain(":-0");
    }

    @Test
    void aFaultIsAProblemThatSaysWhatIsAllowedAndWhatWasFound() throws Exception {
        send("{\"version\":1,\"samples\":[[280,0],[281,-0.5]]}")
                .andExpect(status().isBadRequest())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.status").value(400))
                .andExpect(jsonPath("$.title").isNotEmpty())
                .andExpect(jsonPath("$.detail").value("The spectral irradiance must be 0 to 1e12 W/(m²·nm), was -0.5."))
                .andExpect(jsonPath("$.pointer").value("/samples/1/1"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "{\"version\":1,\"samples\":[[280,NaN]]}",
                "{\"version\":1,\"samples\":[[280,Infinity]]}",
                "{\"version\":1,\"samples\":[],\"samples\":[]}",
                "{\"version\":1,\"samples\":[]} {}"
            })
    void malformedJsonIsRefused(String body) throws Exception {
        send(body)
                .andExpect(status().isBadRequest())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
    }

    @Test
    void tooManySamplesAreTooMuch() throws Exception {
        String samples = IntStream.rangeClosed(1, SpectrumReader.MOST_SAMPLES + 1)
                .mapToObj(nanometres -> "[" + nanometres + ",1]")
                .collect(Collectors.joining(",", "[", "]"));
        send("{\"version\":1,\"samples\":" + samples + "}")
                .andExpect(status().isContentTooLarge())
                .andExpect(jsonPath("$.pointer").value("/samples"));
    }

    @Test
    void aBodyOverEightMegabytesIsTooMuch() throws Exception {
        send(" ".repeat(BodyReader.MOST_BYTES + 1)).andExpect(status().isContentTooLarge());
    }

    @Test
    void anotherContentTypeIsRefused() throws Exception {
        pages.perform(post("/api/v1/spectra")
                        .header(HttpHeaders.AUTHORIZATION, "Bearer " + key)
                        .contentType(MediaType.TEXT_PLAIN)
                        .content(example()))
                .andExpect(status().isUnsupportedMediaType())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
    }

    @Test
    void anotherMethodIsRefused() throws Exception {
        pages.perform(get("/api/v1/spectra").header(HttpHeaders.AUTHORIZATION, "Bearer " + key))
                .andExpect(status().isMethodNotAllowed())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
    }

    @Test
    void withoutAKeyThereIsAChallenge() throws Exception {
        pages.perform(post("/api/v1/spectra")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(example()))
                .andExpect(status().isUnauthorized())
                .andExpect(header().string(HttpHeaders.WWW_AUTHENTICATE, "Bearer"));
    }

    /** The first document under the heading. */
    private static String example() throws IOException {
        String spectra = Files.readString(Path.of("docs/scene.md")).split("\n# Spectra\n", -1)[1];
        return Arrays.stream(spectra.split("```", -1))
                .filter(block -> block.startsWith("json"))
                .findFirst()
                .orElseThrow()
                .substring("json".length());
    }

    private static SpectrumSummary judged(String document) {
        Spectrum spectrum = SpectrumReader.read(BodyReader.parse(document.getBytes(StandardCharsets.UTF_8)));
        return new SpectrumEvaluation(ReferenceSpectra.tables()).of(spectrum);
    }

    private static List<String> texts(JsonNode list) {
        return Stream.iterate(0, index -> index < list.size(), index -> index + 1)
                .map(index -> list.path(index).stringValue())
                .toList();
    }

    private JsonNode answer(String document) throws Exception {
        return answer("/api/v1/spectra", document.replace('\'', '"'));
    }

    private ResultActions send(String body) throws Exception {
        return send("/api/v1/spectra", body);
    }
}
