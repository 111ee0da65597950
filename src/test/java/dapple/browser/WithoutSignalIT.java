package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.process.LeftBehind;
import dapple.process.Program;
import dapple.testing.NeedsChromium;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * 200 readings of one walk: amid them the network is cut, the program killed, the tab closed and opened, the session lost and
 * the program started again.
 */
@NeedsChromium
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WithoutSignalIT {
    private static final int READINGS = 200;
    private static final String DEMO = "--spring.profiles.active=demo";

    /** The first walk that somebody can go on with. */
    private static final String WALK =
            "return [...document.querySelectorAll(\"a[href*='/walks/']\")][0].getAttribute('href');";

    /** Whether the page and its files are on the phone. */
    private static final String KEPT = """
            const [path, done] = arguments;
            (async () => {
              const page = await caches.match(location.origin + path);
              const files = await (await caches.open('dapple-files-1')).keys();
              done(Boolean(page) && files.length > 10);
            })();
            """;

    /** The code of the last labelled door of the page's walk. */
    private static final String LAST_DOOR =
            "return JSON.parse(document.getElementById('sheet').textContent).stops.filter(stop => stop.door).at(-1).door;";

    private static final String ENCLOSURE_OF_DOOR =
            "return JSON.parse(document.getElementById('sheet').textContent).stops.find(stop => stop.door === arguments[0]).code;";

    private List<String> typed = List.of();
    private LeftBehind left = new LeftBehind(List.of(), 0);
    private int waitingWhenCut;
    private int waitingWithoutProgram;
    private String saidWithoutProgram = "";
    private String enclosureOfDoor = "none";
    private String shownAtDoor = "";
    private boolean askedToSignIn;

    @BeforeAll
    void walk(@TempDir Path data, @TempDir Path scratch) throws Exception {
        Program program = Program.start(data, DEMO);
        Browser browser = Browser.on(program.address().toString()).at(390, 844);
        try {
            PhoneWalk phone = new PhoneWalk(browser);
            String path = begin(browser);
            phone.type(0, 40).await(40, "STORED");

            browser.offline(true);
            phone.type(40, 90).await(50, "WAITING");
            waitingWhenCut = phone.count("WAITING");
            browser.offline(false);
            phone.type(90, 100);
            program.kill();
            phone.type(100, 130);

            browser.anotherTab().at(390, 844).open(path).await("Typed on this phone");
            waitingWithoutProgram = phone.count("WAITING") + phone.count("SENT");
            saidWithoutProgram = browser.text();
            String door = String.valueOf(browser.run(LAST_DOOR));
            enclosureOfDoor = String.valueOf(browser.run(ENCLOSURE_OF_DOOR, door));
            browser.open("/d/" + door).await("Typed on this phone");
            shownAtDoor = browser.texts("[data-slot=door]").get(0);
            phone.type(130, 170);

            browser.signOut();
            program = Program.startAt(program.address().getPort(), data, DEMO);
            browser.await("Sign in again");
            askedToSignIn = true;
            browser.signIn("keeper", "dapple").await("Today");
            browser.open(path).await("Typed on this phone");
            phone.type(170, READINGS).await(READINGS, "STORED");
            typed = phone.keys();
        } finally {
            browser.destroy();
            program.stop();
        }
        left = LeftBehind.in(data, scratch);
    }

    private static String begin(Browser browser) {
        browser.signIn("keeper", "dapple").await("Today").open("/rounds").await("Rounds");
        String path = browser.run(WALK) + "/on-phone";
        browser.open(path).await("Typed on this phone");
        browser.awaitThat("the page is kept", () -> Boolean.TRUE.equals(browser.runAsync(KEPT, path)));
        return path;
    }

    @Test
    void everythingTypedIsStored() {
        assertThat(typed).hasSize(READINGS).doesNotHaveDuplicates();
        assertThat(left.entryKeys()).containsAll(typed);
    }

    @Test
    void nothingIsStoredTwice() {
        assertThat(left.entryKeys()).doesNotHaveDuplicates();
    }

    @Test
    void itIsStoredInTheOrderOfTyping() {
        assertThat(left.entryKeys().stream().filter(typed::contains)).containsExactlyElementsOf(typed);
    }

    @Test
    void whatIsTypedWhileTheNetworkIsCutWaits() {
        assertThat(waitingWhenCut).isEqualTo(50);
    }

    @Test
    void thePageOpensWithoutTheProgramAndStillHasWhatWaits() {
        assertThat(waitingWithoutProgram).isBetween(30, 90);
        assertThat(saidWithoutProgram).contains("wait on this phone");
    }

    @Test
    void aDoorThatIsScannedWithoutTheProgramOpensItsPoints() {
        assertThat(shownAtDoor).startsWith(enclosureOfDoor + ",");
    }

    @Test
    void whoseSessionRanOutIsAskedToSignIn() {
        assertThat(askedToSignIn).isTrue();
    }
}
