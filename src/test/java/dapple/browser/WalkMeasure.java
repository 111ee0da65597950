package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.door.Doors;
import dapple.enclosure.Enclosures;
import dapple.enclosure.Facing;
import dapple.enclosure.NewPoint;
import dapple.light.judging.PointRole;
import dapple.people.Role;
import dapple.round.Cadence;
import dapple.round.DueDays;
import dapple.round.GivenTo;
import dapple.round.PlanDetails;
import dapple.round.RoundArranging;
import dapple.site.Given;
import java.io.PrintStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * How many taps and how much time readings take on the phone's page, from a scanned door to stored, and for a round of 20
 * doors with three points each. Run by {@code docs/measure-walk.sh} alone: times are figures and no test, taps are both.
 */
@BrowserTest
class WalkMeasure {
    private static final int DOORS = 20;
    private static final List<PointRole> POINTS = List.of(PointRole.BASKING, PointRole.GRADIENT, PointRole.SHADE);

    /** Counts real taps, and how long after each Log the entry is in the list, kept on the phone, ms. */
    private static final String WATCH = """
            window.taps = 0;
            window.kept = [];
            let from = 0;
            addEventListener('click', (event) => { window.taps += event.isTrusted ? 1 : 0; }, true);
            document.getElementById('entry').addEventListener('submit', () => { from = performance.now(); }, true);
            new MutationObserver(() => { if (from) window.kept.push(performance.now() - from); from = 0; })
              .observe(document.querySelector('[data-slot=entries]'), { childList: true });
            """;

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Doors doors;

    @Autowired
    private RoundArranging arranging;

    @Autowired
    private Clock clock;

    @Test
    void onePointFromTheScanOn() {
        begin();
        long from = System.nanoTime();
        browser.open("/d/" + ids.doorCode("E07")).await(By.cssSelector("[data-key='1']"));
        double ready = seconds(from);
        browser.run(WATCH);
        from = System.nanoTime();
        String likely = String.valueOf(browser.run(PhoneWalk.LIKELY));
        log(likely);
        double typed = seconds(from);
        new PhoneWalk(browser).await(1, "STORED");
        double stored = seconds(from) - typed;
        out().printf(
                        Locale.ROOT,
                        "one point: from the scanned address to the keys %.2f s and no tap; then %d taps for %s, %.2f s by machine;"
                                + " stored %.2f s after the last%n",
                        ready,
                        taps(),
                        likely,
                        typed,
                        stored);
        assertThat(taps()).isEqualTo(likely.length() + 1);
    }

    @Test
    void aRoundOfTwentyDoors() {
        String walk = "/rounds/" + round() + "/walks/" + today() + "/on-phone";
        begin();
        browser.open(walk).await("Typed on this phone");
        browser.run(WATCH);
        int digits = 0;
        long from = System.nanoTime();
        for (int reading = 0; reading < DOORS * POINTS.size(); reading++) {
            String amount = String.format(Locale.ROOT, "%.1f", 0.5 + reading % 40 / 10.0);
            digits += amount.length();
            log(amount);
        }
        double typed = seconds(from);
        new PhoneWalk(browser).await(DOORS * POINTS.size(), "STORED");
        List<?> kept = (List<?>) browser.run("return window.kept.sort((one, other) => one - other);");
        out().printf(
                        Locale.ROOT,
                        "a round of %d doors and %d readings: %d taps, digits and one each; %.1f s by machine;"
                                + " kept on the phone after Log: median %.0f ms, largest %.0f ms; all stored %.1f s after the last%n",
                        DOORS,
                        DOORS * POINTS.size(),
                        taps(),
                        typed,
                        number(kept.get(kept.size() / 2)),
                        number(kept.get(kept.size() - 1)),
                        seconds(from) - typed);
        assertThat(taps()).isEqualTo(digits + DOORS * POINTS.size());
    }

    /** Digits, and Log; then the next point shows. */
    private void log(String amount) {
        int before = kept();
        amount.chars().mapToObj(Character::toString).forEach(browser::tap);
        browser.tap("Log " + amount);
        browser.awaitThat(amount + " is kept", () -> kept() > before);
    }

    private int kept() {
        return new PhoneWalk(browser).states().size();
    }

    private void begin() {
        browser.at(390, 844).signInAs("keeper").open("/account").runAsync(PhoneWalk.FORGET);
    }

    private int taps() {
        return Math.toIntExact((Long) Given.of(browser.run("return window.taps;")));
    }

    private long round() {
        long room = enclosures.addRoom(ids.site(), "Counted", 90);
        List<Long> added = new ArrayList<>();
        for (int door = 1; door <= DOORS; door++) {
            long enclosure = enclosures.add(ids.site(), room, "C" + door, door, Optional.empty());
            POINTS.forEach(role -> enclosures.addPoint(
                    ids.site(),
                    enclosure,
                    new NewPoint("P" + (1 + POINTS.indexOf(role)), "", role, Facing.STRONGEST, Optional.empty())));
            added.add(enclosure);
        }
        doors.coded(ids.site(), added, ids.person("supervisor"));
        DueDays daily = new DueDays(new Cadence.Every(1), today(), Optional.empty());
        return arranging.add(ids.site(), new PlanDetails("Counted", daily, new GivenTo.Holders(Role.KEEPER), added));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }

    private static double number(Object found) {
        return ((Number) found).doubleValue();
    }

    private static double seconds(long from) {
        return (System.nanoTime() - from) / 1e9;
    }

    private static PrintStream out() {
        return System.out;
    }
}
