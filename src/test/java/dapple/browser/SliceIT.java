package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;

/**
 * The way of one reading through the program: a keeper logs it, a supervisor sees what is off, a vet finds it at the
 * animal. Each test writes at enclosures of its own.
 */
@BrowserTest
@Timeout(value = 90, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SliceIT {
    /** So that nobody waits a minute for what happens each minute. */
    private static final String SHORT_MINUTES = """
            const wait = window.setTimeout;
            window.setTimeout = (then, milliseconds, ...more) =>
                wait(then, milliseconds === 60000 ? 200 : milliseconds, ...more);
            """;

    /** What somebody else does meanwhile: asks for a point's form and sends it. */
    private static final String LOG_FROM_ELSEWHERE = """
            fetch(arguments[0]).then(page => page.text()).then(html => {
                const form = new DOMParser().parseFromString(html, 'text/html').getElementById('entry');
                const entry = new URLSearchParams(new FormData(form));
                entry.set('amount', '0.2');
                fetch(arguments[0], { method: 'POST', body: entry });
            });
            """;

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    @Autowired
    private Environment environment;

    @BeforeEach
    void startAfresh() {
        browser.scheme("day").at(390, 844).complaints();
    }

    @AfterEach
    void nothingIsComplainedOf() {
        assertThat(browser.complaints()).as("in the browser's console").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "390, 844, E01, Juniper, 1.7, 1.4 to 2.0, 'Target 2.9 to 7.4: short by 1.2 (41\u00a0%).'",
        "1280, 800, E03, Saffron, 1.7, 1.4 to 2.0, 'Target 4.5 to 8.0: short by 2.8 (62\u00a0%).'"
    })
    void aWeakReadingComesToTheSupervisorAndTheVet(
            int width, int height, String enclosure, String animal, String typed, String interval, String verdict) {
        browser.at(width, height).signInAs("keeper").open("/").await("Today");
        browser.press(link("/enclosures/" + ids.enclosure(enclosure) + "/visit"))
                .await("P1 basking");
        key(typed, width < height);
        browser.press("Log " + typed)
                .await("too weak")
                .await(typed)
                .await(interval)
                .await(verdict);

        browser.signInAs("supervisor").open("/review").await("Review");
        assertThat(finding(enclosure)).contains("too weak", typed + "\nUVI", interval, verdict);

        browser.signInAs("vet").open("/animals").press(animal).await("Readings");
        assertThat(browser.texts("tbody tr"))
                .anySatisfy(row -> assertThat(row)
                        .contains(enclosure + " P1", typed, interval, "too weak", "target version 1", "meter M1"));
    }

    /** Types with the page's own pad: with a finger on a phone, with the mouse at a desk. */
    private void key(String number, boolean phone) {
        number.chars().mapToObj(Character::toString).forEach(phone ? browser::tap : browser::press);
    }

    private String finding(String enclosure) {
        return browser.texts(".finding").stream()
                .filter(text -> text.contains(enclosure))
                .findFirst()
                .orElseThrow();
    }

    private static By link(String path) {
        return By.cssSelector("main a[href='" + path + "']");
    }

    @Test
    void aReadingOverTheCeilingStopsTheRound() {
        ask("E04", "P1").type("amount", "9.3").press("Log 9.3").await("Stop: over the ceiling");
        assertThat(browser.texts(".stop .reading b")).containsExactly("9.3");
        assertThat(browser.texts(".steps li")).hasSize(3);
        assertThat(browser.texts("[data-caution]")).hasSize(3);
        assertThat(browser.text()).contains("ceiling 3.75, measured 7.4 to 11.2", "Switch the lamp off at its plug");
    }

    @Test
    void aCorrectionTakesThePlaceOfAMistypedNumber() {
        ask("E02", "P2").type("amount", "12").press("Log 12").await("12.0");
        browser.press("Wrong number, correct it").await("The first number stays on record");
        browser.type("amount", "1.2").type("reason", "point forgotten").press("Store the correction");
        browser.await("Read P2 again");
        assertThat(browser.texts(".reading b")).containsExactly("1.2");
        browser.open("/enclosures/" + ids.enclosure("E02"));
        assertThat(browser.texts("tbody tr")).anySatisfy(row -> assertThat(row).contains("P2", "1.2"));
        assertThat(browser.text()).doesNotContain("12.0");
    }

    @Test
    void anOpenReviewRenewsItselfEachMinute() {
        Object script = browser.command("Page.addScriptToEvaluateOnNewDocument", Map.of("source", SHORT_MINUTES))
                .getOrDefault("identifier", "");
        browser.signInAs("supervisor").open("/review").await("Review");
        assertThat(browser.texts(".finding h2")).noneMatch(found -> found.contains("E09"));
        browser.run(LOG_FROM_ELSEWHERE, asking("E09", "P1"));
        browser.await("E09 Litoria caerulea");
        assertThat(finding("E09")).contains("too weak", "0.2\nUVI");
        browser.command("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", script));
    }

    @Test
    void aWrongPasswordSaysSo() {
        browser.signIn("keeper", "not this one").await("Name and password do not match.");
        assertThat(browser.path()).isEqualTo("/sign-in?again");
    }

    @Test
    void aVisitWorksWithoutScripts() throws Exception {
        Browser plain = Browser.withoutScripts(environment);
        try {
            plain.at(390, 844).signInAs("keeper").open(asking("E06", "P2")).await("P2 gradient");
            assertThat(plain.texts(".pad button")).containsOnly("");
            plain.type("amount", "1.8").press("Log").await("Stored.").press("Next: P1");
            plain.await("P1 basking").press("lamp out");
            plain.await("P3 shade").type("amount", "much").press("Log").await("Enter the UV index from 0 to 99.9");
            plain.type("amount", "0.1").press("Log").await("on target").press("End of the visit");
            plain.await("Visit at E06");
            assertThat(plain.texts("tbody tr")).hasSize(3);
        } finally {
            plain.destroy();
        }
    }

    @Test
    void aVisitUnderWayTellsWhatIsLeft() {
        ask("E10", "P1").type("amount", "0.5").press("Log 0.5").await("on target");
        browser.open(browser.run("return document.querySelector('.button.main').getAttribute('href');")
                .toString()
                .replaceFirst("/points/.*", ""));
        assertThat(browser.texts("tbody tr"))
                .satisfiesExactly(
                        read -> assertThat(read)
                                .contains("P1", "0.5", "on target")
                                .doesNotContain("not read yet"),
                        left -> assertThat(left).contains("P2", "not read yet").doesNotContain("on target", "stale"));
    }

    private Browser ask(String enclosure, String point) {
        return browser.signInAs("keeper").open(asking(enclosure, point));
    }

    private String asking(String enclosure, String point) {
        return "/enclosures/" + ids.enclosure(enclosure) + "/visits/" + UUID.randomUUID() + "/points/"
                + ids.point(enclosure, point);
    }
}
