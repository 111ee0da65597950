package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * How long after a move of a dragged lamp its map, zones and checks are painted, in a real browser; and how long searches for rigs take. Run
 * by {@code docs/measure-desk.sh} alone: what it finds is a figure and no test.
 */
@BrowserTest
class DeskMeasure {
    private static final int MOVES = 200;
    private static final int WARM = 40;
    private static final List<String> ENCLOSURES = List.of("E02", "E03", "E05", "E07", "E09");
    private static final String LAMP = "svg[data-plane=section] [data-part='lamps[0]']";

    private static final String MIDDLE = """
            const part = document.querySelector(arguments[0]);
            part.scrollIntoView({ block: 'center' });
            const box = part.querySelector('path').getBoundingClientRect();
            return [box.x + box.width / 2, box.y + box.height / 2];
            """;

    /** From now until map, zones and checks of a look have come and the next frame is there, ms; minus one if one lacks. */
    private static final String WATCH = """
            const look = document.getElementById('look');
            window.took = 0;
            window.from = 0;
            look.addEventListener('pointermove', () => { window.from = window.from || performance.now(); }, true);
            look.addEventListener('looked', () => requestAnimationFrame(() => requestAnimationFrame(() => {
              if (!window.from) return;
              const isWhole = look.querySelectorAll('#look-checks .check').length === 15
                && look.querySelector('.zone-shares .shares') && look.querySelectorAll('svg[data-plane] .limit').length > 1;
              window.took = isWhole ? performance.now() - window.from : -1;
              window.from = 0;
            })));
            """;

    private static final String TOOK = """
            const done = arguments[arguments.length - 1];
            const wait = () => {
              if (!window.took) { setTimeout(wait, 2); return; }
              const took = window.took;
              window.took = 0;
              done(took);
            };
            wait();
            """;

    /** Whether what is shown while the lamp is held is what a look of the same form gives: zones and checks, word by word. */
    private static final String IS_OF_THE_FORM = """
            const done = arguments[arguments.length - 1];
            const form = document.getElementById('draft');
            const body = new URLSearchParams(new FormData(form));
            body.set('rough', 'true');
            const said = (page) => [...page.querySelectorAll('.zone-shares li span, #look-checks .check > p')]
              .map((words) => words.textContent.replace(/\\s+/g, ' ')).join();
            fetch(form.dataset.look, { method: 'POST', body }).then((answer) => answer.text()).then((html) =>
              done(said(new DOMParser().parseFromString(html, 'text/html')) === said(document)));
            """;

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    @Test
    void movesOfALamp() {
        begin("E07", "Measured");
        double[] at = middle();
        browser.run(WATCH);
        mouse("mousePressed", at[0], at[1]);
        List<Double> took = new ArrayList<>();
        long busy = 0;
        for (int move = 0; move < WARM + MOVES; move++) {
            busy = move == WARM ? processorNanos() : busy;
            mouse("mouseMoved", at[0] + across(move), at[1] + down(move));
            took.add(((Number) browser.runAsync(TOOK)).doubleValue());
        }
        double each = (processorNanos() - busy) / 1e6 / MOVES;
        assertThat(browser.runAsync(IS_OF_THE_FORM))
                .as("zones and checks are of the last move")
                .isEqualTo(true);
        mouse("mouseReleased", at[0], at[1]);
        out().printf(Locale.ROOT, "a moved lamp, processor time of the program, with all its threads: %.0f ms%n", each);
        say(
                "a moved lamp, until its map, zones and checks are painted, " + MOVES + " moves",
                took.subList(WARM, took.size()));
        assertThat(took).hasSize(WARM + MOVES).allMatch(millis -> millis > 0);
    }

    /** Says more than the time where other programs run as well. */
    private static long processorNanos() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** Pixels, some 2 cm from one move to the next. */
    private static double across(int move) {
        return -40 + 12 * (move % 7);
    }

    /** Never twice to one place, so that nothing is remembered. */
    private static double down(int move) {
        return 12 * (move % 3) + 7.0 * Math.floorDiv(move, 21);
    }

    @Test
    void searchesForRigs() {
        for (String code : ENCLOSURES) {
            begin(code, "Measured twice");
            browser.open(browser.path().replaceAll("[?].*", "") + "/proposals").press("Look for rigs");
            String first = browser.await("It took").text();
            String second = browser.press("Look again").await("It took").text();
            out().println("rigs proposed for " + code + ": " + seconds(first) + " s, again " + seconds(second) + " s");
        }
    }

    private static String seconds(String page) {
        return page.replaceAll("(?s).*It took ([0-9.]+) s.*", "$1");
    }

    private void begin(String code, String name) {
        browser.at(1280, 900).signInAs("supervisor");
        browser.open("/enclosures/" + ids.enclosure(code) + "/desk").await("Begin a draft");
        browser.type("name", name).press("Begin").await("Zones by UV index");
        browser.await(By.cssSelector("[data-undo]"));
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

    private static void say(String what, List<Double> millis) {
        List<Double> sorted = millis.stream().sorted().toList();
        out().printf(
                        Locale.ROOT,
                        "%s: median %.0f ms, 95th percentile %.0f ms%n",
                        what,
                        sorted.get(sorted.size() / 2),
                        sorted.get((int) Math.floor(sorted.size() * 0.95)));
    }

    private static PrintStream out() {
        return System.out;
    }
}
