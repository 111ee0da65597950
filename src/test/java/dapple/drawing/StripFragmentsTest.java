package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.reading.Marks;
import dapple.site.Formats;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
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
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Draws the samples with the real fragments and styles, into {@code target/strips}, by day and by night. */
class StripFragmentsTest {
    private static final Path FOLDER = Path.of("target/strips");
    private static String page = "";

    @BeforeAll
    static void draw() throws IOException {
        page = engine().process("drawing/strips", context());
        Files.createDirectories(FOLDER);
        Files.writeString(FOLDER.resolve("strips.html"), page);
        Files.writeString(FOLDER.resolve("night.html"), page.replace("<html ", "<html data-scheme=\"night\" "));
    }

    @Test
    void everyDiscHasItsWords() throws Exception {
        Document parsed = parsed();
        assertThat(elements(parsed, "circle", "disc"))
                .hasSizeGreaterThan(100)
                .filteredOn(disc ->
                        ((Element) disc.getParentNode()).getAttribute("role").equals("img"))
                .allMatch(disc -> !((Element) disc.getParentNode())
                        .getElementsByTagName("title")
                        .item(0)
                        .getTextContent()
                        .isBlank());
    }

    @Test
    void statesHaveTheirColourAndTheirWords() throws Exception {
        assertThat(elements(parsed(), "circle", "disc ceiling"))
                .hasSize(2)
                .allMatch(disc -> disc.getParentNode().getTextContent().contains("OVER_CEILING"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no reading",
                "ceiling 5.0",
                "new tube L-104, 30 Jun",
                "finer mesh, 6 Nov",
                "planned off: 0",
                "unknown, weeks: 2",
                "E09, warm corridor, alone",
                "eyes shut &lt;left&gt;",
                "UVI·h a day",
                "Readings: 600, of which",
                "of 600 readings are drawn",
                "the lowest and the highest of each step of time",
                "20,000"
            })
    void saysInWords(String words) {
        assertThat(page).contains(words);
    }

    @Test
    void namesBothVersionsOfTheTarget() throws Exception {
        assertThat(elements(parsed(), "text", "over minor"))
                .extracting(Element::getTextContent)
                .contains("target 2", "target 3");
    }

    @Test
    void leavesNothingToAnAttributeOfColour() {
        assertThat(page).doesNotContain("style=").doesNotContainPattern("(fill|stroke)=\"#");
    }

    private static Document parsed() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder()
                .parse(new InputSource(new StringReader(page.replaceFirst("<!DOCTYPE[^>]*>", ""))));
    }

    private static List<Element> elements(Document page, String name, String style) {
        var found = page.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .filter(element -> element.getAttribute("class").startsWith(style))
                .toList();
    }

    private static Context context() {
        Context context = new Context(Locale.UK);
        context.setVariable("formats", new Formats());
        context.setVariable("marks", new Marks());
        context.setVariable(
                "css", Path.of("src/main/resources/static/css").toUri().toString());
        context.setVariable("basking", new Pair(Samples.basking()));
        context.setVariable("shade", new Pair(Samples.shade()));
        context.setVariable("lux", new Pair(Samples.illuminance()));
        context.setVariable("year", DoseStrip.of(Samples.year(), StripSize.LONG, Samples.FIRST_WEEK, Samples.WEEKS));
        context.setVariable(
                "quarter", DoseStrip.of(Samples.year(), StripSize.SHORT, Samples.FIRST_WEEK.plusWeeks(39), 13));
        return context;
    }

    /** Both drawings of a history. */
    public record Pair(TimeStrip desk, TimeStrip phone) {
        Pair(StripHistory history) {
            this(
                    TimeStrip.of(history, StripSize.LONG, Samples.TODAY),
                    TimeStrip.of(history, StripSize.SHORT, Samples.TODAY));
        }
    }

    private static SpringTemplateEngine engine() {
        ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
        messages.setBasename("messages");
        messages.setDefaultEncoding("UTF-8");
        messages.setFallbackToSystemLocale(false);
        ClassLoaderTemplateResolver templates = new ClassLoaderTemplateResolver();
        templates.setPrefix("templates/");
        templates.setSuffix(".html");
        templates.setCharacterEncoding("UTF-8");
        SpringTemplateEngine engine = new SpringTemplateEngine();
        engine.setTemplateResolver(templates);
        engine.setTemplateEngineMessageSource(messages);
        return engine;
    }
}
