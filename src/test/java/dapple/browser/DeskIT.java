package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.draft.DraftFacts;
import dapple.draft.DraftPlace;
import dapple.draft.Drafts;
import dapple.prediction.EnclosureScenes;
import dapple.rig.RigScene;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;

/** The desk by mouse, by finger and by keys: what is shown is what the same form gives without scripts. */
@BrowserTest
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class DeskIT {
    private static final Pattern PROPOSED = Pattern.compile("rigs? meets? all that was weighed|stands in the way");

    private static final String LAMP = "svg[data-plane=section] [data-part='lamps[0]']";
    private static final String X = "lamps[0].xMetres";
    private static final double DOWN_PIXELS = 12;
    private static final String SHARES = ".zone-shares .legend";

    /** The middle of a part's shape on the screen. */
    private static final String MIDDLE = """
            const part = document.querySelector(arguments[0]);
            part.scrollIntoView({ block: 'center' });
            const box = part.querySelector('path').getBoundingClientRect();
            return [box.x + box.width / 2, box.y + box.height / 2];
            """;

    private static final String VALUE = "return document.querySelector(`[name='${arguments[0]}']`).value;";
    private static final String FOCUS = "document.querySelector(arguments[0]).focus();";
    private static final String FOCUSED = "return document.activeElement.getAttribute('aria-label') ?? '';";

    /** What the page of the same form without scripts says of the zones. */
    private static final String COMPUTED = """
            const done = arguments[arguments.length - 1];
            const form = document.getElementById('draft');
            const body = new URLSearchParams(new FormData(form));
            body.set('action', 'look');
            fetch(form.getAttribute('action'), { method: 'POST', body }).then((answer) => answer.text()).then((html) => {
              const page = new DOMParser().parseFromString(html, 'text/html');
              done([...page.querySelectorAll('.zone-shares li span')].map((part) => part.textContent.trim()).join());
            });
            """;

    private static final String SHOWN =
            "return [...document.querySelectorAll('.zone-shares li span')].map((part) => part.textContent.trim()).join();";

    private static final String OUTCOME =
            "return document.querySelector(`#look-checks [data-check=${arguments[0]}]`).dataset.outcome;";

    /** What each rough look says from now on of what belongs together. */
    private static final String RECORD = """
            window.roughly = [];
            document.getElementById('look').addEventListener('looked', () => {
              const check = document.querySelector('#look-checks.rough [data-check=TOGETHER]');
              if (check) window.roughly.push(check.dataset.outcome);
            });
            """;

    private static final String OUTCOMES = """
            return [...document.querySelectorAll('#look-checks .check')]
              .map((check) => check.dataset.check + check.textContent.replace(/\\s+/g, ' ')).join();
            """;

    /** The same of the page of the same form without scripts. */
    private static final String OUTCOMES_COMPUTED = """
            const done = arguments[arguments.length - 1];
            const form = document.getElementById('draft');
            const body = new URLSearchParams(new FormData(form));
            body.set('action', 'look');
            fetch(form.getAttribute('action'), { method: 'POST', body }).then((answer) => answer.text()).then((html) => {
              const page = new DOMParser().parseFromString(html, 'text/html');
              done([...page.querySelectorAll('#look-checks .check')]
                .map((check) => check.dataset.check + check.textContent.replace(/\\s+/g, ' ')).join());
            });
            """;

    /** What the engine says of the first receiver, and the shares of the zones from one percent on, in whole percent. */
    private static final String ENGINE = """
            const done = arguments[arguments.length - 1];
            fetch('/api/v1/light-field', {
              method: 'POST',
              headers: { Authorization: 'Bearer demo', 'Content-Type': 'application/json' },
              body: arguments[0],
            }).then((answer) => answer.json()).then((light) => done({
              basking: light.receivers[0].values.uvi,
              shares: Object.values(light.zones.shares).filter((share) => share >= 0.01)
                .map((share) => `: ${Math.round(share * 100)} %`),
            }));
            """;

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    @Autowired
    private EnclosureScenes scenes;

    @Autowired
    private Drafts drafts;

    @Autowired
    private Clock clock;

    @BeforeEach
    void startAfresh() {
        browser.scheme("day").complaints();
    }

    @AfterEach
    void nothingIsComplainedOf() {
        assertThat(browser.complaints()).as("in the browser's console").isEmpty();
    }

    private void begin(int width, int height, String name) {
        begin("E07", width, height, name);
    }

    private void begin(String enclosure, int width, int height, String name) {
        browser.at(width, height).signInAs("supervisor");
        browser.open("/enclosures/" + ids.enclosure(enclosure) + "/desk").await("Begin a draft");
        browser.type("name", name).press("Begin").await("Zones by UV index");
        browser.await(By.cssSelector(LAMP)).await(By.cssSelector("[data-undo]"));
    }

    private double height() {
        return Double.parseDouble(value("lamps[0].zMetres"));
    }

    private String value(String field) {
        return String.valueOf(browser.run(VALUE, field));
    }

    private String shares() {
        return String.join("\n", browser.texts(SHARES));
    }

    private double[] middle() {
        List<?> found = (List<?>) browser.run(MIDDLE, LAMP);
        return new double[] {((Number) found.get(0)).doubleValue(), ((Number) found.get(1)).doubleValue()};
    }

    private void mouse(String type, double x, double y) {
        browser.command(
                "Input.dispatchMouseEvent",
                Map.of("type", type, "x", x, "y", y, "button", "left", "buttons", 1, "clickCount", 1));
    }

    private void settle() {
        browser.awaitThat(
                "the drawing follows the form", () -> browser.runAsync(COMPUTED).equals(browser.run(SHOWN)));
        browser.await(By.cssSelector(LAMP));
    }

    @Test
    void aDraggedLampChangesTheZonesAsTheEngineSays() {
        begin(1280, 900, "By mouse");
        String before = shares();
        double high = height();
        double[] from = middle();
        mouse("mousePressed", from[0], from[1]);
        for (int step = 1; step <= 10; step++) {
            mouse("mouseMoved", from[0] - 6 * step, from[1] + 4 * step);
        }
        mouse("mouseReleased", from[0] - 60, from[1] + 40);
        assertThat(height()).isLessThan(high);
        settle();
        assertThat(shares()).isNotEqualTo(before);
        browser.press(By.cssSelector("[data-undo]"));
        assertThat(height()).isEqualTo(high);
        settle();
        assertThat(shares()).isEqualTo(before);
        browser.press(By.cssSelector("[data-redo]"));
        assertThat(height()).isLessThan(high);
        settle();
    }

    /** The tube comes down to the slab, so that its light falls where its ultraviolet does. */
    @Test
    void aCheckFollowsWhileTheLampIsStillHeld() {
        begin(1280, 900, "Held");
        assertThat(browser.run(OUTCOME, "TOGETHER")).isEqualTo("FAILS");
        browser.run(RECORD);
        double[] from = middle();
        mouse("mousePressed", from[0], from[1]);
        for (int step = 1; step <= 12; step++) {
            mouse("mouseMoved", from[0], from[1] + DOWN_PIXELS * step);
        }
        browser.awaitThat(
                "a rough look says so",
                () -> String.valueOf(browser.run("return window.roughly.join();"))
                        .contains("HOLDS"));
        mouse("mouseReleased", from[0], from[1] + DOWN_PIXELS * 12);
        settle();
        browser.await(By.cssSelector("#look-checks:not(.rough)"));
        assertThat(browser.run(OUTCOME, "TOGETHER")).isEqualTo("HOLDS");
        assertThat(browser.run(OUTCOMES)).isEqualTo(browser.runAsync(OUTCOMES_COMPUTED));
    }

    @Test
    void whatIsTypedIsUndoneAlsoAfterThePageCameAnew() {
        begin(1280, 900, "By typing");
        String before = value(X);
        String shown = shares();
        typeX("0.35");
        typeX("0.30");
        settle();
        assertThat(shares()).isNotEqualTo(shown);
        browser.press(By.cssSelector("[data-undo]"));
        assertThat(value(X)).isEqualTo("0.35");
        browser.press(By.cssSelector("[data-redo]"));
        assertThat(value(X)).isEqualTo("0.30");
        browser.press(By.cssSelector("button.wide[value=look]")).await(By.cssSelector("[data-undo]:not([hidden])"));
        assertThat(value(X)).isEqualTo("0.30");
        browser.press(By.cssSelector("[data-undo]")).press(By.cssSelector("[data-undo]"));
        assertThat(value(X)).isEqualTo(before);
        settle();
        assertThat(shares()).isEqualTo(shown);
    }

    private void typeX(String metres) {
        browser.run(FOCUS, LAMP);
        browser.keys(Keys.ENTER);
        browser.run("document.activeElement.select();");
        browser.keys(metres + Keys.TAB);
    }

    @Test
    void aFingerDragsWithoutMovingThePage() {
        begin(390, 844, "By finger");
        double left = Double.parseDouble(value("lamps[0].xMetres"));
        double[] from = middle();
        Object scrolled = browser.run("return scrollY;");
        touch("touchStart", from[0], from[1]);
        for (int step = 1; step <= 10; step++) {
            touch("touchMove", from[0] - 4 * step, from[1] + 3 * step);
        }
        browser.command("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
        assertThat(Double.parseDouble(value("lamps[0].xMetres"))).isLessThan(left);
        assertThat(browser.run("return scrollY;")).isEqualTo(scrolled);
        settle();
    }

    private void touch(String type, double x, double y) {
        browser.command(
                "Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", List.of(Map.of("x", x, "y", y))));
    }

    @Test
    void keysAloneMoveALampAndTakeItBack() {
        begin(1280, 900, "By keys");
        double high = height();
        browser.run(FOCUS, LAMP);
        browser.keys(Keys.ARROW_UP);
        browser.keysWith(Keys.SHIFT, Keys.ARROW_UP);
        assertThat(height()).isCloseTo(high + 0.06, within(1e-9));
        settle();
        assertThat(browser.run(FOCUSED).toString()).as("what has the focus").contains(value("lamps[0].zMetres"));
        browser.keysWith(Keys.CONTROL, "z");
        assertThat(height()).isEqualTo(high);
        browser.run(FOCUS, LAMP);
        browser.keys(Keys.ENTER);
        assertThat(browser.run("return document.activeElement.name;")).isEqualTo("lamps[0].xMetres");
    }

    @Test
    void aPlaceThatIsPressedIsTold() {
        begin(1280, 900, "At a place");
        browser.run("document.querySelector('svg[data-plane=plan]').scrollIntoView({ block: 'center' });");
        List<?> at = (List<?>)
                browser.run("const box = document.querySelector('svg[data-plane=plan] .wall').getBoundingClientRect();"
                        + "return [box.x + box.width / 2, box.y + box.height / 3];");
        mouse("mouseMoved", ((Number) at.get(0)).doubleValue(), ((Number) at.get(1)).doubleValue());
        browser.awaitThat(
                "the place is told", () -> String.join("", browser.texts("#at")).contains("L02"));
        assertThat(String.join("", browser.texts("#at"))).contains("from the left", "%", "predicted");
    }

    /** The answer of the engine, asked by a program of somebody else's, for the draft that the page solved and shows. */
    @Test
    void whatIsSolvedIsReadBackFromTheEngine() {
        begin(1280, 900, "By solving");
        String draft = browser.path().replaceAll("[?].*", "");
        browser.open(draft + "/solving").type("wanted", "1.2").press("Solve").await("At one height");
        browser.press(By.cssSelector("form input[name=zMetres] ~ button")).await("Zones by UV index");
        browser.await(By.cssSelector(LAMP));
        Map<?, ?> answer = (Map<?, ?>) browser.runAsync(ENGINE, document(draft));
        assertThat(Double.parseDouble(String.valueOf(answer.get("basking")))).isCloseTo(1.2, within(0.012));
        List<?> shares = (List<?>) answer.get("shares");
        assertThat(shares).as("zones").isNotEmpty();
        assertThat(shares).allSatisfy(share -> assertThat(shares()).contains(String.valueOf(share)));
    }

    /** In each of five enclosures some rig is found and becomes a draft, or what stands in the way is named. */
    @ParameterizedTest
    @ValueSource(strings = {"E02", "E03", "E05", "E07", "E09"})
    void rigsAreProposed(String enclosure) {
        begin(enclosure, 1280, 900, "To propose from");
        browser.open(browser.path().replaceAll("[?].*", "") + "/proposals");
        browser.press("Look for rigs")
                .await("It took")
                .awaitThat(
                        "rigs or what stands in the way",
                        () -> PROPOSED.matcher(browser.text()).find());
        browser.press(By.cssSelector("form[action$='/proposals/draft'] button")).await("Zones by UV index");
    }

    private String document(String draft) {
        long enclosureId = ids.enclosure("E07");
        long siteId = ids.site();
        Instant now = clock.instant();
        DraftFacts facts = drafts.get(new DraftPlace(siteId, enclosureId), Long.parseLong(draft.replaceAll(".*/", "")));
        return scenes.at(siteId, enclosureId, now, Optional.empty(), Optional.empty())
                .under(RigScene.of(facts.rig().rig(enclosureId, drafts.stock(siteId), now)))
                .document();
    }
}
