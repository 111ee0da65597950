package dapple.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** What holds for every page: our own rules of page-rules.js, and WCAG 2.2 level A and AA as far as axe can tell. */
final class PageRules {
    private static final List<String> TAGS = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
    private static final String OWN = read("page-rules.js");
    private static final String AXE = read("/axe.min.js");
    private static final String RUN_AXE = """
            const [only, done] = arguments;
            axe.run(document, { runOnly: only, resultTypes: ['violations'] }).then(found => done(
                found.violations.flatMap(rule => rule.nodes.map(node =>
                    `${rule.id}: ${node.html} ${node.failureSummary}`))));
            """;

    private PageRules() {}

    /** Every rule that the page breaks as it stands in the browser now, in words. */
    static List<String> brokenBy(Browser browser) {
        return Stream.concat(own(browser).stream(), axe(browser).stream()).toList();
    }

    /** Our own rules: all that another size of a page of which all has been asked can break, but for its colours. */
    static List<String> brokenByAnotherSize(Browser browser) {
        return own(browser);
    }

    private static List<String> own(Browser browser) {
        return words(browser.run(OWN));
    }

    private static List<String> axe(Browser browser) {
        if (browser.run("return typeof axe;").equals("undefined")) {
            browser.run(AXE);
        }
        return words(browser.runAsync(RUN_AXE, TAGS));
    }

    private static List<String> words(Object found) {
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }

    private static String read(String name) {
        try (InputStream in = Objects.requireNonNull(PageRules.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
