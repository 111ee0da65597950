package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.testing.NeedsChromium;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ContextConfiguration;

/** An empty installation in a browser. */
@NeedsChromium
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT, properties = "server.address=127.0.0.1")
@ContextConfiguration(initializers = FreshFolder.class)
@Import(Browser.class)
class FirstRunIT {
    @Autowired
    private Browser browser;

    @ParameterizedTest
    @CsvSource({"390, 844, day", "390, 844, night", "1280, 800, day", "1280, 800, night"})
    void itsPageKeepsTheRulesForEveryPage(int width, int height, String scheme) {
        browser.at(width, height).scheme(scheme).open("/");
        assertThat(browser.path()).isEqualTo("/first-run");
        assertThat(PageRules.brokenBy(browser)).isEmpty();
        browser.press("Begin");
        assertThat(PageRules.brokenBy(browser)).as("with empty fields").isEmpty();
        assertThat(browser.complaints()).isEmpty();
    }
}
