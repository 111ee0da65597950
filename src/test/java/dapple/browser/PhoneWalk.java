package dapple.browser;

import java.time.Duration;
import java.util.List;

/** Works the page of a walk in a browser by its own fields and buttons, as quick fingers would. */
final class PhoneWalk {
    /** Nothing is left of what another test has typed. */
    static final String FORGET = """
            const done = arguments[0];
            indexedDB.deleteDatabase('dapple-walk-photos');
            const request = indexedDB.deleteDatabase('dapple-walk');
            request.onsuccess = () => done(true);
            """;

    /** The middle of what is expected at the first point of the page. */
    static final String LIKELY = """
            const { low, high } = JSON.parse(document.getElementById('sheet').textContent).stops[0].steps[0].expected;
            return ((low + high) / 2).toFixed(1);
            """;

    /** Opens one door after another, types at its first point, and waits until the entry is in the list. */
    private static final String TYPE = """
            const [from, to, done] = arguments;
            const pause = () => new Promise(then => setTimeout(then, 5));
            (async () => {
              const shown = () => document.querySelectorAll('[data-slot=entries] li').length;
              for (let number = from; number < to; number++) {
                const doors = document.querySelectorAll('[data-slot=doors] button');
                doors[number % doors.length].click();
                const before = shown();
                document.getElementById('amount').value = (0.5 + (number % 30) / 10).toFixed(1);
                document.getElementById('entry').requestSubmit();
                while (shown() === before) await pause();
              }
              done(shown());
            })();
            """;

    private static final String KEYS = """
            const done = arguments[0];
            const request = indexedDB.open('dapple-walk', 1);
            request.onsuccess = () => {
              const all = request.result.transaction('entries').objectStore('entries').getAll();
              all.onsuccess = () => done(all.result.sort((a, b) => a.number - b.number || a.takenAt.localeCompare(b.takenAt)).map(entry => entry.key));
            };
            """;

    /** A few hundred entries, one after another, by a program that has just started on a busy machine. */
    private static final Duration MANY = Duration.ofMinutes(4);

    private final Browser browser;

    PhoneWalk(Browser browser) {
        this.browser = browser;
    }

    /** Readings from one number until before another. */
    PhoneWalk type(int from, int to) {
        browser.runAsync(TYPE, from, to);
        return this;
    }

    /** Waits until so many entries are in a state. */
    PhoneWalk await(int count, String state) {
        browser.awaitThat(
                () -> count + " entries " + state + " but " + count(state), MANY, () -> count(state) == count);
        return this;
    }

    int count(String state) {
        return Math.toIntExact(states().stream().filter(state::equals).count());
    }

    List<String> states() {
        return strings(browser.run(
                "return [...document.querySelectorAll('[data-slot=entries] li')].map(each => each.dataset.state);"));
    }

    /** The keys of all that this phone keeps, in the order of typing. */
    List<String> keys() {
        return strings(browser.runAsync(KEYS));
    }

    private static List<String> strings(Object found) {
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }
}
