package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.photo.Camera;
import dapple.site.RepeatsAsked;
import dapple.site.Sites;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.JdbcTemplate;

/** Reading on the phone's page: what it asks and says at once, and by how many taps. */
@BrowserTest
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class PhoneIT {
    /** Every row of the table of slips through the script of the page; the rows that differ. */
    private static final String SLIPS = """
            const [rows, done] = arguments;
            const ranges = text => text ? text.split(';').map(one => one.split(':').map(Number)).map(([low, high]) => ({ low, high })) : [];
            import(document.querySelector('[data-walk]').dataset.plausibleScript).then(({ slipsOf }) => done(rows.filter(row => {
              const [quantity, amount, low, high, points, quantities, cold, direction, slips] = row.split(',');
              const found = slipsOf(quantity, Number(amount), { low: Number(low), high: Number(high) },
                { otherPoints: ranges(points), otherQuantities: ranges(quantities), isCold: cold === 'true' });
              return (found ? `${found.direction},${found.slips.join(' ')}` : ',') !== `${direction},${slips}`;
            })));
            """;

    /** The same for the reader's own dose. */
    private static final String DOSES = """
            const [rows, done] = arguments;
            import(document.querySelector('[data-walk]').dataset.doseScript).then(({ keeperDose }) => done(rows.filter(row => {
              const cells = row.split(',');
              const moment = from => ({ uvIndex: Number(cells[from]), minutes: Number(cells[from + 1]),
                hazard: { actinicPerUviMinute: Number(cells[from + 2]), uvaPerUviMinute: Number(cells[from + 3]), assumed: cells[from + 4] === 'true' } });
              const found = keeperDose([moment(0), moment(5)]);
              const near = (one, other) => Math.abs(one - Number(other)) < 1e-9;
              return !(near(found.uviMinutes, cells[10]) && near(found.actinic, cells[11]) && near(found.uva, cells[12]) && near(found.share, cells[13])
                && found.binding === cells[14] && found.advice === cells[15] && String(found.assumed) === cells[16]);
            })));
            """;

    /** The same for three readings one after the other. */
    private static final String REPEATS = """
            const [rows, done] = arguments;
            import(document.querySelector('[data-walk]').dataset.repeatsScript).then(({ nextOf, amountOf }) => done(rows.filter(row => {
              const [amounts, resolution, next, amount] = row.split(',');
              const typed = amounts.split(';').map(Number);
              return nextOf(typed, Number(resolution)) !== next || amountOf(typed) !== Number(amount);
            })));
            """;

    /** As a browser whose storage is full gives up what it began to write. */
    private static final String NO_ROOM = """
            const put = IDBObjectStore.prototype.put;
            IDBObjectStore.prototype.put = function (record) {
              const request = put.call(this, record);
              if (record.bytes?.byteLength > 1000000) this.transaction.abort();
              return request;
            };
            """;

    /** The keys of all pictures that this phone keeps. */
    private static final String PICTURES = """
            const done = arguments[0];
            const request = indexedDB.open('dapple-walk-photos');
            request.onsuccess = () => {
              const all = request.result.transaction('pictures').objectStore('pictures').getAllKeys();
              all.onsuccess = () => done(all.result);
            };
            """;

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    @Autowired
    private Environment environment;

    @Autowired
    private Sites sites;

    @Autowired
    private JdbcTemplate database;

    @BeforeEach
    void startAfresh() {
        browser.scheme("day").at(390, 844).signInAs("keeper").open("/account").runAsync(PhoneWalk.FORGET);
    }

    @AfterEach
    void joinTheNetwork() {
        browser.offline(false);
    }

    @Test
    void theScriptNamesTheSlipsOfTheTable() throws IOException {
        door("E01");
        assertThat(browser.runAsync(SLIPS, rows("/dapple/light/expectation/slips-cases.csv")))
                .isEqualTo(List.of());
    }

    @Test
    void theScriptCountsTheReadersDoseAsTheTableDoes() throws IOException {
        door("E01");
        assertThat(browser.runAsync(DOSES, rows("/dapple/light/dose/keeper-dose-worked.csv")))
                .isEqualTo(List.of());
    }

    @Test
    void theScriptRepeatsAsTheTableDoes() throws IOException {
        door("E01");
        assertThat(browser.runAsync(REPEATS, rows("/dapple/light/metrology/repeats-worked.csv")))
                .isEqualTo(List.of());
    }

    @Test
    void threeReadingsWithoutSignalAreStoredAsOneWithAllOfThem() {
        long site = ids.site();
        settle(site, RepeatsAsked.EVERYWHERE);
        try {
            door("E06");
            browser.offline(true);
            String likely = String.valueOf(browser.run(PhoneWalk.LIKELY));
            log(likely);
            new PhoneWalk(browser).await(1, "OPEN");
            browser.await("Reading 2 of 3.");
            log(likely);
            browser.await("Reading 3 of 3.");
            log(likely);
            new PhoneWalk(browser).await(1, "WAITING");
            browser.offline(false).run("document.querySelector(\"[data-do=send]\").click();");
            new PhoneWalk(browser).await(1, "STORED");
            assertThat(database.queryForList("select amount from reading_repeat where site_id = ?", Double.class, site))
                    .containsExactly(Double.valueOf(likely), Double.valueOf(likely), Double.valueOf(likely));
        } finally {
            settle(site, RepeatsAsked.NOWHERE);
        }
    }

    @Test
    void aNoteWithoutSignalIsStoredLater() {
        door("E06");
        browser.offline(true);
        browser.press("Note, cover, photo").type("note", "Mesh is dusty").tap("Keep the note");
        new PhoneWalk(browser).await(1, "WAITING");
        browser.offline(false).run("document.querySelector(\"[data-do=send]\").click();");
        new PhoneWalk(browser).await(1, "STORED");
        assertThat(database.queryForList(
                        "select n.note from visit_note n join visit v on v.id = n.visit_id where v.enclosure_id = ? and n.note = ?",
                        String.class,
                        ids.enclosure("E06"),
                        "Mesh is dusty"))
                .hasSize(1);
    }

    /** Taken without signal, the tab closed; the reading typed after it goes first. */
    @Test
    void aPhotoWithoutSignalOutlastsItsTabAndIsStoredOnce(@TempDir Path camera) throws IOException {
        door("E06");
        browser.offline(true).press("Note, cover, photo");
        browser.attach("photo", Files.write(camera.resolve("large.jpg"), Camera.jpegWithExif(3000, 2000, 1)));
        PhoneWalk phone = new PhoneWalk(browser).await(1, "WAITING");
        browser.await("Photos among them: 1");
        log(String.valueOf(browser.run(PhoneWalk.LIKELY)));
        List<String> typed = phone.await(2, "WAITING").keys();
        browser.offline(false).anotherTab().at(390, 844);
        door("E06");
        phone.await(2, "STORED");
        assertThat(storedAt(typed.get(0), "visit_photo"))
                .singleElement(InstanceOfAssertFactories.INSTANT)
                .isAfter(storedAt(typed.get(1), "reading").get(0));
        assertThat(database.queryForList(
                        "select width_pixels from visit_photo where entry_key = ?",
                        Integer.class,
                        UUID.fromString(typed.get(0))))
                .containsExactly(1600);
    }

    /** A photo never takes the room that readings need. */
    @Test
    void whereThereIsNoRoomForAPhotoNothingIsKeptOfItAndReadingsAre(@TempDir Path camera) throws IOException {
        door("E06");
        browser.offline(true).run(NO_ROOM);
        browser.press("Note, cover, photo");
        browser.attach("photo", Files.write(camera.resolve("photo.jpg"), Camera.jpeg(640, 480)));
        browser.await("No room on this phone");
        log(String.valueOf(browser.run(PhoneWalk.LIKELY)));
        assertThat(new PhoneWalk(browser).await(1, "WAITING").keys()).hasSize(1);
        assertThat(browser.runAsync(PICTURES)).isEqualTo(List.of());
    }

    private List<Instant> storedAt(String key, String table) {
        return database
                .queryForList(
                        "select recorded_at from " + table + " where entry_key = ?",
                        Timestamp.class,
                        UUID.fromString(key))
                .stream()
                .map(Timestamp::toInstant)
                .toList();
    }

    /** From the opened page to a stored reading and the next point: a tap a digit, and one. */
    @Test
    void aReadingTakesItsDigitsAndOneTap() {
        door("E06");
        String first = title();
        String likely = String.valueOf(browser.run(PhoneWalk.LIKELY));
        likely.chars().mapToObj(Character::toString).forEach(browser::tap);
        browser.tap("Log " + likely);
        new PhoneWalk(browser).await(1, "STORED");
        assertThat(title()).isNotEqualTo(first);
    }

    @Test
    void anUnlikelyReadingIsAskedForAgainAndBothAreKept() {
        door("E02");
        String first = title();
        log("0");
        browser.await("unlikely here: lower than expected");
        assertThat(title()).isEqualTo(first);
        assertThat(browser.texts("#unlikely li")).isNotEmpty();
        log("0.1");
        new PhoneWalk(browser).await(2, "STORED");
        browser.await("Both readings are kept");
    }

    @Test
    void overTheCeilingTheWalkStopsWithoutSignalAndReviewHearsOfItLater() {
        door("E04");
        browser.offline(true);
        log("9.9");
        browser.await("Stop: over the ceiling").await("Switch the lamp off at its plug");
        new PhoneWalk(browser).await(1, "WAITING");
        browser.press("Done. Go on");
        browser.offline(false).run("document.querySelector(\"[data-do=send]\").click();");
        new PhoneWalk(browser).await(1, "STORED");
        browser.signInAs("supervisor").open("/review").await("Review");
        assertThat(browser.texts(".finding")).anySatisfy(row -> assertThat(row).contains("E04", "over the ceiling"));
    }

    @Test
    void twoPhonesWalkOneRoundTogether() throws Exception {
        String walk = walk();
        Browser other = Browser.on(Browser.home(environment)).at(390, 844);
        try {
            other.signIn("supervisor", "dapple").await("Today").open(walk).await("Typed on this phone");
            browser.open(walk).await("Typed on this phone");
            PhoneWalk mine = new PhoneWalk(browser);
            PhoneWalk theirs = new PhoneWalk(other);
            for (int number = 0; number < 6; number++) {
                mine.type(number, number + 1);
                theirs.type(number, number + 1);
            }
            mine.await(6, "STORED");
            theirs.await(6, "STORED");
            assertThat(mine.keys()).doesNotContainAnyElementsOf(theirs.keys());
        } finally {
            other.destroy();
        }
    }

    @Test
    void whatSomebodyElseTypedWaitsForThem() {
        door("E07");
        browser.offline(true);
        log("3.3");
        new PhoneWalk(browser).await(1, "WAITING");
        browser.offline(false).signInAs("supervisor");
        door("E07");
        browser.await("wait for them to sign in on this phone");
        browser.signInAs("keeper");
        door("E07");
        browser.awaitThat("it is sent", () -> new PhoneWalk(browser).count("WAITING") == 0);
    }

    /** A local network has no HTTPS, so no service worker; what is typed is kept all the same, and outlasts the page. */
    @Test
    void overPlainHttpWhatIsTypedIsKeptToo() throws Exception {
        Browser plain = Browser.overPlainHttp(environment).at(390, 844);
        try {
            String page = "/enclosures/" + ids.enclosure("E05") + "/on-phone";
            plain.signIn("keeper", "dapple").await("Today").open(page).await("Typed on this phone");
            assertThat(plain.run("return window.isSecureContext || 'serviceWorker' in navigator;"))
                    .isEqualTo(false);
            plain.offline(true);
            PhoneWalk phone = new PhoneWalk(plain).type(0, 3).await(3, "WAITING");
            List<String> typed = phone.keys();
            plain.offline(false).anotherTab().at(390, 844).open(page).await("Typed on this phone");
            phone.await(3, "STORED");
            assertThat(phone.keys()).isEqualTo(typed).doesNotHaveDuplicates();
        } finally {
            plain.destroy();
        }
    }

    /** Half as many pixels across, as a phone at 200 %. */
    @Test
    void atTwiceTheSizeNothingRunsOverTheEdge() {
        browser.at(195, 422);
        door("E01");
        Map<?, ?> widths = (Map<?, ?>) browser.run(
                "return { page: document.documentElement.scrollWidth, screen: document.documentElement.clientWidth };");
        assertThat(widths.get("page")).isEqualTo(widths.get("screen"));
    }

    /** Gloves: 48 px at least, whatever is pressed on the way. */
    @Test
    void whatIsPressedIsLargeEnoughForGloves() {
        door("E01");
        browser.press("Note, cover, photo");
        assertThat(browser.run(
                        "return [...document.querySelectorAll('#phone button, #phone a, #phone select, #phone summary, #phone label.button')]"
                                + ".filter(one => one.checkVisibility()).filter(one => one.getBoundingClientRect().height < 48)"
                                + ".map(one => one.textContent);"))
                .isEqualTo(List.of());
    }

    private void door(String code) {
        browser.open("/enclosures/" + ids.enclosure(code) + "/on-phone").await("Typed on this phone");
    }

    private void log(String amount) {
        browser.type("amount", amount).tap("Log " + amount);
    }

    private void settle(long site, RepeatsAsked where) {
        sites.settle(site, sites.settingsVersion(site), sites.settings(site).withRepeatsAsked(where));
    }

    private String title() {
        return browser.texts("[data-slot=title]").get(0);
    }

    private String walk() {
        browser.open("/rounds").await("Rounds");
        return browser.run("return document.querySelector(\"a[href*='/walks/']\").getAttribute('href');") + "/on-phone";
    }

    private static List<String> rows(String table) throws IOException {
        try (InputStream file = PhoneIT.class.getResourceAsStream(table)) {
            String text = new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().skip(1).toList();
        }
    }
}
