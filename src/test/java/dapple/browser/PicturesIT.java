package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;

/** Makes the pictures of docs/pictures.md: run docs/pictures.sh. */
@BrowserTest
@EnabledIfSystemProperty(named = "pictures", matches = "true")
class PicturesIT {
    private static final Path FOLDER = Path.of("docs", "pictures");
    private static final int TALLEST_PHONE = 1600;
    private static final int TALLEST_DESK = 900;
    private static final int LARGEST_BYTES = 300_000;

    /** A4 at 96 pixels an inch. */
    private static final int A4_WIDTH = 794;

    private static final int A4_HEIGHT = 1123;
    private static final String SEARCHED = "The search is done";
    private static final String BEING_MADE = "A backup is being made";
    private static final int MOST_LOOKS = 200;

    @TempDir
    private Path sheets;

    @Autowired
    private Browser browser;

    @Autowired
    private DemoIds ids;

    @BeforeAll
    static void makeFolder() throws IOException {
        Files.createDirectories(FOLDER);
    }

    @AfterEach
    void backToDay() {
        browser.scheme("day").command("Emulation.setEmulatedMedia", Map.of("media", ""));
    }

    @ParameterizedTest
    @CsvSource({"phone, 390, 844", "desktop, 1280, 800"})
    void eachPage(String device, int width, int height) throws IOException {
        browser.at(width, height).scheme("day");
        picture("sign-in-" + device, width, page -> page.signOut().open("/sign-in"));
        picture("today-" + device, width, page -> page.signInAs("keeper").open("/"));
        picture(
                "visit-ask-" + device,
                width,
                page -> page.open(ask("E07")).press("3").press(".").press("1"));
        picture("visit-reply-" + device, width, page -> page.open("/readings/" + ids.reading("E07", "P1")));
        picture("visit-stop-" + device, width, page -> page.open("/readings/" + ids.reading("E05", "P1")));
        picture("rounds-" + device, width, page -> page.open("/rounds"));
        picture(
                "on-phone-" + device,
                width,
                page -> page.open("/enclosures/" + ids.enclosure("E07") + "/on-phone")
                        .await("Typed on this phone"));
        picture("account-" + device, width, page -> page.open("/account"));
        picture("keys-" + device, width, page -> page.open("/account/keys").type("keyName", "planning sheet"));
        picture("review-" + device, width, page -> page.signInAs("supervisor").open("/review"));
        picture("enclosure-" + device, width, page -> page.open("/enclosures/" + ids.enclosure("E07")));
        picture("light-" + device, width, page -> page.open("/enclosures/" + ids.enclosure("E07") + "/light"));
        picture("rig-" + device, width, page -> page.open("/enclosures/" + ids.enclosure("E07") + "/rig"));
        picture("move-" + device, width, page -> foresee(page, "E07"));
        picture("drafts-" + device, width, page -> page.open(desk()));
        picture("desk-" + device, width, page -> page.open(desk() + "/" + ids.draft("E07")));
        picture(
                "comparison-" + device,
                width,
                page -> page.open(desk() + "/comparison?rig=installed&rig=" + ids.draft("E07")));
        picture("installation-" + device, width, page -> page.open(desk() + "/" + ids.draft("E07") + "/installation"));
        picture("solving-" + device, width, this::solve);
        picture("proposals-" + device, width, this::propose);
        picture(
                "commissioning-" + device,
                width,
                page -> page.open("/enclosures/" + ids.enclosure("E11") + "/commissioning")
                        .await("As stated"));
        picture("bench-" + device, width, this::fitOnTheBench);
        picture("timers-" + device, width, page -> page.open("/enclosures/" + ids.enclosure("E02") + "/timers"));
        picture("lamp-model-" + device, width, page -> page.open("/lamp-models/" + ids.lampModel("L01")));
        picture("meters-" + device, width, page -> page.open("/meters"));
        picture("agreement-" + device, width, page -> page.open("/meters/agreement"));
        picture("meter-finding-" + device, width, page -> page.open("/meters/agreement/" + ids.meterFinding()));
        picture("targets-" + device, width, page -> page.open("/targets/confirmation"));
        picture("animal-" + device, width, page -> page.signInAs("vet").open("/animals/" + ids.animal("Thistle")));
        picture("audit-" + device, width, page -> page.signInAs("inspector").open(audit("E07")));
        picture("people-" + device, width, page -> page.signInAs("admin").open("/people"));
        picture("import-try-" + device, width, this::tryASheet);
        picture("backups-" + device, width, this::backUp);
        picture("records-" + device, width, page -> page.signInAs("inspector").open("/records"));
        picture("tour-" + device, width, page -> page.signInAs("keeper").open("/tour"));
    }

    @Test
    void theNightHouse() throws IOException {
        browser.at(390, 844).scheme("night");
        picture("review-night-phone", 390, page -> page.signInAs("supervisor").open("/review"));
        picture("visit-ask-night-phone", 390, page -> page.signInAs("keeper").open(ask("E07")));
    }

    @Test
    void thePrintedSheets() throws IOException {
        browser.at(A4_WIDTH, A4_HEIGHT).scheme("day").signInAs("vet");
        browser.command("Emulation.setEmulatedMedia", Map.of("media", "print"));
        printed("animal-print", "/animals/" + ids.animal("Thistle") + "/sheet");
        browser.signInAs("supervisor");
        printed("timers-print", "/enclosures/" + ids.enclosure("E02") + "/timers/sheet");
        printed("commissioning-print", "/enclosures/" + ids.enclosure("E11") + "/commissioning/sheet");
    }

    private void printed(String name, String path) throws IOException {
        browser.open(path).at(A4_WIDTH, A4_HEIGHT);
        browser.run("document.body.style.padding = '14mm';");
        store(name);
    }

    /** What raising a lamp will do, before it is done. */
    private void foresee(Browser page, String enclosure) {
        page.open("/enclosures/" + ids.enclosure(enclosure) + "/rig/lamps/" + ids.partOfRig("fitting", enclosure)
                        + "/move")
                .type("zMetres", "0.62")
                .press("Show what it will do")
                .await("What it will do");
    }

    private void solve(Browser page) {
        page.open(desk() + "/" + ids.draft("E07") + "/solving")
                .type("wanted", "1.2")
                .press("Solve")
                .await("At one height");
    }

    private void propose(Browser page) {
        page.open(desk() + "/" + ids.draft("E07") + "/proposals");
        if (!page.text().contains(SEARCHED)) {
            page.press("Look for rigs").await(SEARCHED);
        }
    }

    /** By the square of the distance, but for what a hand and a display add. */
    private void fitOnTheBench(Browser page) {
        page.open("/lamps/" + ids.lamp("L01") + "/bench").type("wanted", "3");
        page.run("document.getElementById('meterId').selectedIndex = 1;");
        List<String> shown = List.of("6.1", "3.6", "2.2", "1.5", "1.1");
        for (int row = 0; row < shown.size(); row++) {
            page.type("distances" + row, String.valueOf(20 + 10 * row));
            page.type("amounts" + row, shown.get(row));
        }
        page.press("Fit the curve").await("What the readings say");
    }

    /** One row of it is bad, so that nothing is stored. */
    private void tryASheet(Browser page) {
        String sheet = """
                Enclosure,Species,Date,Basking UVI,Shade UVI
                F1,Pogona vitticeps,2025-11-13,3.4,0.1
                F2,Testudo hermanni,2025-11-13,2.9,0.0
                F2,Testudo hermanni,2025-11-20,much,0.0
                """;
        page.signInAs("admin")
                .open("/records/import")
                .attach("file", stored("weeks.csv", sheet))
                .press("Look what is in it")
                .await("What the columns of")
                .press("Try it: store nothing yet")
                .await("What would be stored");
    }

    private void backUp(Browser page) {
        page.open("/backups").press("Back up now");
        for (int look = 0; look < MOST_LOOKS && page.text().contains(BEING_MADE); look++) {
            page.open("/backups");
        }
        assertThat(page.text()).contains("every sum compared");
    }

    private Path stored(String name, String text) {
        try {
            return Files.writeString(sheets.resolve(name), text);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private String desk() {
        return "/enclosures/" + ids.enclosure("E07") + "/desk";
    }

    private String audit(String enclosure) {
        return "/enclosures/" + ids.enclosure(enclosure) + "/audit";
    }

    private String ask(String enclosure) {
        return "/enclosures/" + ids.enclosure(enclosure) + "/visits/" + UUID.randomUUID() + "/points/"
                + ids.point(enclosure, "P1");
    }

    /** The whole page, or as much of it as a long screen holds. */
    private void picture(String name, int width, Consumer<Browser> way) throws IOException {
        boolean phone = width < 640;
        int screen = phone ? 844 : 800;
        int tallest = phone ? TALLEST_PHONE : TALLEST_DESK;
        way.accept(browser.at(width, screen));
        Object tall = browser.run("return document.documentElement.scrollHeight;");
        browser.at(width, Math.min(tallest, Math.max(screen, ((Number) tall).intValue())));
        store(name);
    }

    private void store(String name) throws IOException {
        browser.run("return document.fonts.ready.then(() => true);");
        byte[] picture = browser.picture();
        assertThat(picture.length).as(name + " is small enough for the docs").isLessThan(LARGEST_BYTES);
        Files.write(FOLDER.resolve(name + ".png"), picture);
    }
}
