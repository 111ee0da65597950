package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.quantity.Interval;
import dapple.light.zone.Zone;
import dapple.reading.Marks;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The fragment with an invented enclosure; what it writes stands in target/drawing, to be looked at. */
class DrawingFragmentTest {
    private static final Path LOOKED_AT = Path.of("target", "drawing");
    private static final int MOST_BYTES = 60_000;
    private static final Pattern DRAWING = Pattern.compile("<svg class=\"drawing.*?</svg>", Pattern.DOTALL);

    private static String page = "";

    @BeforeAll
    static void draw() throws IOException {
        Map<String, Object> model = Map.of(
                "drawings",
                List.of(Figures.section(), Figures.plan()),
                "bar",
                ShareBar.of(shares(), Map.of(Zone.BASKING, new Interval(0.061, 0.149))),
                "marks",
                new Marks());
        Files.createDirectories(LOOKED_AT);
        for (String scheme : List.of("night", "day")) {
            page = written(model, scheme);
            Files.writeString(LOOKED_AT.resolve(scheme + ".html"), page);
        }
    }

    private static Map<Zone, Double> shares() {
        return Map.of(
                Zone.OVER_CEILING, 0.003,
                Zone.ABOVE_TARGET, 0.06,
                Zone.BASKING, 0.1,
                Zone.GRADIENT, 0.477,
                Zone.SHADE, 0.36);
    }

    private static String written(Map<String, Object> model, String scheme) {
        ResourceBundleMessageSource words = new ResourceBundleMessageSource();
        words.setBasename("messages");
        words.setDefaultEncoding(StandardCharsets.UTF_8.name());
        ClassLoaderTemplateResolver templates = new ClassLoaderTemplateResolver();
        templates.setPrefix("templates/");
        templates.setSuffix(".html");
        SpringTemplateEngine engine = new SpringTemplateEngine();
        engine.setTemplateResolver(templates);
        engine.setTemplateEngineMessageSource(words);
        Context context = new Context(Locale.ENGLISH, model);
        context.setVariable("scheme", scheme);
        return engine.process("drawing-sample", context);
    }

    private static List<String> drawings() {
        return DRAWING.matcher(page).results().map(found -> found.group()).toList();
    }

    private static Document parsed(String drawing) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(drawing)));
    }

    @Test
    void drawsAllThatItIsGiven() {
        assertThat(drawings()).hasSize(3);
    }

    @Test
    void aDrawingIsWellFormed() throws Exception {
        for (String drawing : drawings()) {
            assertThat(parsed(drawing).getDocumentElement().getTagName()).isEqualTo("svg");
        }
    }

    @Test
    void aDrawingIsSmallEnoughForAPhone() {
        assertThat(drawings())
                .allSatisfy(drawing -> assertThat(drawing.getBytes(StandardCharsets.UTF_8).length)
                        .isLessThan(MOST_BYTES));
    }

    @Test
    void theFindingIsSaidInWords() {
        assertThat(drawings().get(0))
                .contains("aria-labelledby=\"d0-title d0-finding\"")
                .contains(">Section at 0.30 m depth, UV index</title>")
                .contains(
                        ">The basking place P1 lies below the line of 2.0. Shade under the shelf and at the right.</desc>");
    }

    @Test
    void everyPathHasData() throws Exception {
        for (String drawing : drawings()) {
            NodeList paths = parsed(drawing).getElementsByTagName("path");
            for (int index = 0; index < paths.getLength(); index++) {
                assertThat(paths.item(index).getAttributes().getNamedItem("d").getNodeValue())
                        .matches("(M-?[\\d.]+ -?[\\d.]+l[-\\d. ]+z?)+");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fill=\"url(#shade-dots)\"",
                "fill=\"url(#over-hatch)\"",
                "class=\"limit shade\"",
                "class=\"limit low\"",
                "class=\"limit high\"",
                "class=\"limit ceiling\"",
                "class=\"limit gap\"",
                ">5.0 ceiling</text>",
                ">L-104 tube</text>",
                ">L-088 spot</text>",
                ">P1 1.7</text>",
                ">P5 not known</text>",
                "href=\"#too-weak\"",
                "class=\"disc\"",
                "class=\"ring\"",
                "class=\"void\"",
                " m</text>",
                "class=\"wide\" font-size=\"13.0\"",
                "class=\"narrow\" font-size=\"22.0\""
            })
    void aSectionShows(String what) {
        assertThat(drawings().get(0)).contains(what);
    }

    @Test
    void noColourStandsInAnAttribute() {
        assertThat(drawings()).allSatisfy(drawing -> assertThat(drawing).doesNotContain("=\"#1", "rgb(", "style="));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "basking: 10 %, 6 to 15 %",
                "over the ceiling: under 1 %",
                "above the target: 6 %",
                "gradient: 48 %",
                "shade: 36 %"
            })
    void theBarSaysItsSharesInWords(String words) {
        assertThat(page).contains(">" + words + "</span>");
    }
}
