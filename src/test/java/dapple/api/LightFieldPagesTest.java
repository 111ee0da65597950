package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.uncertainty.Intervals;
import dapple.testing.PagesTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.ResultActions;
import tools.jackson.databind.JsonNode;

@PagesTest
class LightFieldPagesTest extends ProgramPages {
    private static final String SCENE = """
            {"version":1,"lamps":[{"id":"a","centre":[0,0,1],"aim":[0,0,-1],"source":{"shape":"beam","exponent":1},
            "output":[{"quantity":"uvi","intensity":1}]}],MORE}""";

    @Test
    void answersTheExampleOfTheDocsAsTheEngineDoes() throws Exception {
        String scene = example();
        JsonNode answer = answer(scene);
        Asked asked = SceneReader.read(
                BodyReader.parse(scene.getBytes(StandardCharsets.UTF_8)), Deadline.in(Duration.ofMinutes(1)));
        Field field = Field.of(asked.scene());
        for (int index = 0; index < asked.receivers().size(); index++) {
            Light light = field.at(asked.receivers().get(index).receiver());
            JsonNode receiver = answer.path("receivers").path(index);
            light.values()
                    .forEach((quantity, amount) -> assertThat(receiver.path("values")
                                    .path(Names.of(quantity))
                                    .doubleValue())
                            .isEqualTo(amount));
            assertThat(receiver.path("error").doubleValue()).isEqualTo(light.error());
            assertThat(receiver.has("facing")).isEqualTo(light.facing().isPresent());
        }
    }

    @Test
    void theExampleIsLitAndItsLampsAddUp() throws Exception {
        JsonNode bask = answer(example()).path("receivers").path(0);
        double sum = bask.path("byLamp").path("tube").path("uvi").doubleValue();
        assertThat(sum).isPositive();
        assertThat(bask.path("values").path("uvi").doubleValue()).isEqualTo(sum);
        assertThat(bask.path("byLamp").path("spot").has("uvi")).isFalse();
    }

    @Test
    void aPointBelowASpotFollowsTheInverseSquareLaw() throws Exception {
        JsonNode answer = answer(scene("""
                "receivers":[{"id":"r","at":[0,0,0.5],"facing":[0,0,2]}]"""));
        double rounding = 1e-12;
        assertThat(answer.path("receivers").path(0).path("values").path("uvi").doubleValue())
                .isEqualTo(4, within(rounding));
    }

    @Test
    void aGridIsTheSameAsItsPlacesAlone() throws Exception {
        JsonNode grid = answer(scene("""
                        "grid":{"from":[0,0,0],"to":[0.4,0.2,0.2],"step":0.1,"facing":"maximum"}""")).path("grid");
        assertThat(IntStream.range(0, 3)
                        .map(axis -> grid.path("counts").path(axis).intValue()))
                .containsExactly(5, 3, 3);
        JsonNode receiver = answer(scene("""
                        "receivers":[{"id":"r","at":[0.1,0.2,0.1],"facing":"maximum"}]""")).path("receivers").path(0);
        assertThat(grid.path("uvi").path(1 + 5 * (2 + 3)).doubleValue())
                .isEqualTo(receiver.path("values").path("uvi").doubleValue());
    }

    @Test
    void pointsInsideSolidsAndOnSourcesAreNull() throws Exception {
        JsonNode uvi = answer(scene("""
                        "obstacles":[{"shape":"box","min":[-0.2,-0.2,0.4],"max":[0.2,0.2,0.6]}],
                        "grid":{"from":[0,0,0],"to":[0,0,1],"step":0.5,"facing":"lamp:a"}""")).path("grid").path("uvi");
        assertThat(uvi.path(0).doubleValue()).isZero();
        assertThat(uvi.path(1).isNull()).isTrue();
        assertThat(uvi.path(2).isNull()).isTrue();
    }

    @Test
    void aReceiverOnASourceIsRefused() throws Exception {
        send(scene("""
                        "receivers":[{"id":"r","at":[0,0,1],"facing":"all"}]"""))
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.pointer").value("/receivers/0/at"));
    }

    @Test
    void aReadingWhereThereIsNoLightIsRefused() throws Exception {
        String behind = scene("\"receivers\":[]")
                .replace("\"intensity\":1", "\"reading\":1,\"at\":[0,0,2],\"facing\":[0,0,-1]");
        send(behind)
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.pointer").value("/lamps/0/output"));
    }

    @Test
    void aFaultIsAProblemThatNamesItsMember() throws Exception {
        send(scene("\"obstacels\":[]"))
                .andExpect(status().isBadRequest())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.status").value(400))
                .andExpect(jsonPath("$.title").isNotEmpty())
                .andExpect(jsonPath("$.detail").isNotEmpty())
                .andExpect(jsonPath("$.pointer").value("/obstacels"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "{\"version\":NaN}",
                "{\"version\":1,\"version\":1}",
                "{\"version\":1} {}",
                "{\"version\":Infinity}",
                "nonsense"
            })
    void malformedJsonIsRefusedInOurOwnWords(String body) throws Exception {
        String answer = send(body)
                .andExpect(status().isBadRequest())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(answer).doesNotContain("Exception", "jackson", "token");
    }

    @Test
    void deepNestingIsRefused() throws Exception {
        send("[".repeat(100_000)).andExpect(status().isBadRequest());
    }

    @Test
    void aBodyOverEightMegabytesIsTooMuch() throws Exception {
        send(" ".repeat(BodyReader.MOST_BYTES + 1)).andExpect(status().isContentTooLarge());
    }

    @Test
    void tooManyReceiversAreTooMuch() throws Exception {
        String receivers = IntStream.rangeClosed(0, 20_000)
                .mapToObj(number -> "{\"id\":\"" + number + "\",\"at\":[0,0,0],\"facing\":\"all\"}")
                .collect(Collectors.joining(",", "\"receivers\":[", "]"));
        send(scene(receivers))
                .andExpect(status().isContentTooLarge())
                .andExpect(jsonPath("$.pointer").value("/receivers"));
    }

    @Test
    void anotherContentTypeIsRefused() throws Exception {
        pages.perform(post("/api/v1/light-field")
                        .header(HttpHeaders.AUTHORIZATION, "Bearer " + key)
                        .contentType(MediaType.TEXT_PLAIN)
                        .content(scene("\"receivers\":[]")))
                .andExpect(status().isUnsupportedMediaType())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
    }

    @Test
    void anotherMethodIsRefused() throws Exception {
        pages.perform(get("/api/v1/light-field").header(HttpHeaders.AUTHORIZATION, "Bearer " + key))
                .andExpect(status().isMethodNotAllowed())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
    }

    @Test
    void anotherAddressIsNotFound() throws Exception {
        pages.perform(get("/api/v1/nothing").header(HttpHeaders.AUTHORIZATION, "Bearer " + key))
                .andExpect(status().isNotFound())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
    }

    @Test
    void aProgramHasNoSession() throws Exception {
        send(scene("\"receivers\":[]"))
                .andExpect(status().isOk())
                .andExpect(header().doesNotExist(HttpHeaders.SET_COOKIE));
    }

    @Test
    void aSceneOfNoLampsIsDark() throws Exception {
        JsonNode answer = answer("""
                {"version":1,"lamps":[],"receivers":[{"id":"r","at":[0,0,0],"facing":"maximum"}]}""");
        assertThat(answer.path("receivers").path(0).path("values").isEmpty()).isTrue();
    }

    @Test
    void intervalsAreThoseOfTheEngine() throws Exception {
        String scene = example().replaceFirst("\\{", """
                {"uncertainty":{"reading":0.05,"meter":0.1,"position":0.005},""");
        Asked asked = SceneReader.read(
                BodyReader.parse(scene.getBytes(StandardCharsets.UTF_8)), Deadline.in(Duration.ofMinutes(1)));
        Field field = Field.of(asked.scene());
        Intervals intervals = Intervals.of(asked.scene(), asked.uncertainty().orElseThrow());
        JsonNode receivers = answer(scene).path("receivers");
        assertThat(receivers.size()).isEqualTo(4);
        for (int index = 0; index < receivers.size(); index++) {
            Receiver receiver = asked.receivers().get(index).receiver();
            JsonNode ends = receivers.path(index).path("interval");
            Map<Quantity, Interval> expected = intervals.at(field, receiver, field.at(receiver));
            assertThat(ends.size()).isEqualTo(2);
            expected.forEach(
                    (quantity, interval) -> assertThat(interval).isEqualTo(interval(ends.path(Names.of(quantity)))));
        }
    }

    private static Interval interval(JsonNode ends) {
        assertThat(ends.size()).isEqualTo(2);
        return new Interval(ends.path(0).doubleValue(), ends.path(1).doubleValue());
    }

    /** 4 ± 2 · √(0.1² + 0.05²) · 4. */
    @Test
    void aReceiverHasAnIntervalWhereTheSceneIsUncertain() throws Exception {
        JsonNode receiver = answer(scene("""
                        "receivers":[{"id":"r","at":[0,0,0.5],"facing":[0,0,2]}],
                        "uncertainty":{"reading":0.1,"meter":0.05,"position":0}""")).path("receivers").path(0);
        Interval interval = interval(receiver.path("interval").path("uvi"));
        double half = 8 * Math.hypot(0.1, 0.05);
        double rounding = 1e-12;
        assertThat(interval.low()).isCloseTo(4 - half, within(rounding));
        assertThat(interval.high()).isCloseTo(4 + half, within(rounding));
    }

    @Test
    void withoutUncertaintyThereIsNoInterval() throws Exception {
        JsonNode receiver = answer(example()).path("receivers").path(0);
        assertThat(receiver.has("values")).isTrue();
        assertThat(receiver.has("interval")).isFalse();
    }

    @Test
    void aGridHasNoIntervals() throws Exception {
        JsonNode answer = answer(scene("""
                        "grid":{"from":[0,0,0],"to":[0.1,0,0],"step":0.1,"facing":"maximum"},
                        "uncertainty":{"reading":0.1,"meter":0.05,"position":0.01}"""));
        assertThat(answer.path("grid").has("uvi")).isTrue();
        assertThat(answer.path("grid").has("interval")).isFalse();
    }

    private static String scene(String more) {
        return SCENE.replace("MORE", more);
    }

    /** The first document in the docs. */
    private static String example() throws IOException {
        return Arrays.stream(Files.readString(Path.of("docs/scene.md")).split("```", -1))
                .filter(block -> block.startsWith("json"))
                .findFirst()
                .orElseThrow()
                .substring("json".length());
    }

    private JsonNode answer(String scene) throws Exception {
        return answer("/api/v1/light-field", scene);
    }

    private ResultActions send(String body) throws Exception {
        return send("/api/v1/light-field", body);
    }
}
