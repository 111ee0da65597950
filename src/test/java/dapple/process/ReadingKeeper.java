package dapple.process;

import dapple.process.PlainBrowser.Page;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A keeper who reads on and on, and remembers what the program has acknowledged and what it has left unanswered. */
final class ReadingKeeper {
    private static final Pattern READING = Pattern.compile("/readings/\\d+");

    private final PlainBrowser browser;
    private final List<String> enclosures;
    private final Set<String> acknowledgedKeys = new HashSet<>();
    private final Map<Entry, String> acknowledged = new LinkedHashMap<>();
    private final List<Entry> unanswered = new ArrayList<>();
    private int visits;

    private ReadingKeeper(PlainBrowser browser, List<String> enclosures) {
        this.browser = browser;
        this.enclosures = enclosures;
    }

    /** Signs in, with enclosures of their own: every so manieth. */
    static ReadingKeeper signedIn(URI server, int number, int keepers) throws IOException, InterruptedException {
        PlainBrowser browser = new PlainBrowser(server);
        browser.signIn("keeper", "dapple");
        List<String> all = Pattern.compile("href=\"(/enclosures/\\d+)\"")
                .matcher(browser.get("/").body())
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
        List<String> own = Stream.iterate(number, index -> index < all.size(), index -> index + keepers)
                .map(all::get)
                .toList();
        return new ReadingKeeper(browser, own);
    }

    /**
     * Logs readings, each in a visit of its own, until the program answers no more.
     *
     * @return whether one was sent and never answered
     */
    boolean readUntilTheProgramIsGone(Runnable whenAcknowledged) throws InterruptedException {
        try {
            while (true) {
                Entry entry = nextEntry();
                unanswered.add(entry);
                acknowledged.put(entry, acknowledgement(send(entry)));
                acknowledgedKeys.add(entry.key());
                unanswered.remove(entry);
                whenAcknowledged.run();
            }
        } catch (IOException gone) {
            return !unanswered.isEmpty();
        }
    }

    /** Logs one reading, and waits until it is acknowledged. */
    void readOnce() throws IOException, InterruptedException {
        acknowledgement(send(nextEntry()));
    }

    private Entry nextEntry() throws IOException, InterruptedException {
        String enclosure = enclosures.get(visits++ % enclosures.size());
        Page form = browser.open(enclosure + "/visit");
        Map<String, String> fields = Map.of(
                "_csrf", form.field("_csrf"),
                "key", form.field("key"),
                "meterId", form.first("<option value=\"(\\d+)\"\\s+selected"),
                "amount", visits % 10 + "." + visits / 10 % 10);
        return new Entry(form.path(), fields);
    }

    private Page send(Entry entry) throws IOException, InterruptedException {
        return browser.post(entry.path(), entry.fields());
    }

    private static String acknowledgement(Page answer) {
        return answer.location()
                .filter(READING.asMatchPredicate())
                .orElseThrow(() -> new AssertionError("not acknowledged: " + answer));
    }

    /** Goes on, with the cookies of before, where the program is now. */
    void moveTo(URI server) {
        browser.moveTo(server);
    }

    boolean isSignedIn() throws IOException, InterruptedException {
        return browser.get("/account").status() == 200;
    }

    /**
     * Sends everything since the last time again as it was, as after a lost connection.
     *
     * @return the keys of acknowledged entries for which another reading is named now
     */
    List<String> sendAgain() throws IOException, InterruptedException {
        List<String> otherwise = new ArrayList<>();
        for (Map.Entry<Entry, String> entry : acknowledged.entrySet()) {
            if (!acknowledgement(send(entry.getKey())).equals(entry.getValue())) {
                otherwise.add(entry.getKey().key());
            }
        }
        for (Entry entry : unanswered) {
            acknowledgement(send(entry));
            acknowledgedKeys.add(entry.key());
        }
        acknowledged.clear();
        unanswered.clear();
        return otherwise;
    }

    /** The keys of all entries that the program has ever acknowledged. */
    Set<String> acknowledged() {
        return Set.copyOf(acknowledgedKeys);
    }

    /** A filled form. */
    private record Entry(String path, Map<String, String> fields) {
        String key() {
            return Optional.ofNullable(fields.get("key")).orElseThrow();
        }
    }
}
