package dapple.process;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.process.PlainBrowser.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * The drill: another machine has nothing but the backup, and everybody reads on; an inspector opens a year's record. The
 * pages tell of the day and the hour, so the first machine is looked at again beside each of the others.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RestoreIT {
    private static final Pattern CODE = Pattern.compile("First run: open /first-run and enter the code (\\S+)");
    private static final Pattern TAKEN_IN = Pattern.compile("(Taken in from .*)");
    private static final Pattern REFUSED = Pattern.compile("(Nothing was taken in from .*)");
    private static final Pattern DAY = Pattern.compile("href=\"/backups/([0-9-]+)\"");
    private static final String READINGS = "/enclosures/1/readings.csv";
    private static final List<String> PAGES = List.of(
            "/review",
            "/rooms",
            "/animals",
            "/meters",
            "/lamps",
            "/enclosures/1",
            "/animals/1",
            "/review.csv",
            "/rooms.csv",
            "/animals.csv",
            "/meters.csv",
            "/lamps.csv",
            "/targets.csv",
            "/enclosures/1/rig.csv",
            READINGS);
    private static final long LOOK_AGAIN_MS = 200;
    private static final String PASSWORD = "four plain words here";

    private final List<Pair> restored = new ArrayList<>();
    private final List<Pair> ofTheRecord = new ArrayList<>();
    private String takenIn = "";
    private String refused = "";
    private Page withoutAdministrator = new Page("", 0, Optional.empty(), "");
    private Page altered = withoutAdministrator;
    private Page alteredWithoutAdministrator = withoutAdministrator;
    private Page ofTheForm = withoutAdministrator;

    /** A path, and what is answered there by the machine that has had everything all along and by one that was given it. */
    private record Pair(String path, String original, String given) {}

    @BeforeAll
    void takeTheBackupElsewhere(@TempDir Path data, @TempDir Path elsewhere, @TempDir Path saved) throws Exception {
        try (Program program = Program.start(data, "--spring.profiles.active=demo")) {
            takeOut(program, saved);
            String restore = "--dapple.restore=" + saved.resolve("backup.zip");
            try (Program other = Program.start(elsewhere, restore)) {
                takenIn = other.logged(TAKEN_IN);
                restored.addAll(seen(program, signedIn(other, "supervisor", "dapple")));
                other.stop();
            }
            try (Program other = Program.start(elsewhere, restore)) {
                refused = other.logged(REFUSED);
            }
            wipe(elsewhere);
            try (Program other = Program.start(elsewhere)) {
                openRecord(other, saved);
                ofTheRecord.addAll(seen(program, signedIn(other, "sue.new", PASSWORD)));
            }
        }
    }

    private static PlainBrowser signedIn(Program program, String name, String password)
            throws IOException, InterruptedException {
        PlainBrowser browser = new PlainBrowser(program.address());
        browser.signIn(name, password);
        return browser;
    }

    private static List<Pair> seen(Program program, PlainBrowser given) throws IOException, InterruptedException {
        PlainBrowser original = signedIn(program, "supervisor", "dapple");
        List<Pair> pairs = new ArrayList<>();
        for (String path : PAGES) {
            pairs.add(new Pair(path, look(original, path), look(given, path)));
        }
        return pairs;
    }

    private static String look(PlainBrowser browser, String path) throws IOException, InterruptedException {
        return withoutTheMoment(browser.get(path).body());
    }

    /** Without the token of the forms, the minute of the day, and who looks when, which differ at each look. */
    private static String withoutTheMoment(String body) {
        return body.replaceAll("name=\"_csrf\" value=\"[^\"]*\"", "")
                .replaceAll("\\d\\d:\\d\\d: ", "")
                .replaceAll(" · printed [^<]*", "");
    }

    private static void takeOut(Program program, Path saved) throws IOException, InterruptedException {
        PlainBrowser browser = new PlainBrowser(program.address());
        browser.signIn("admin", "dapple");
        browser.post("/backups", Map.of("_csrf", browser.get("/backups").field("_csrf")));
        Page list = browser.get("/backups");
        while (!DAY.matcher(list.body()).find()) {
            Thread.sleep(LOOK_AGAIN_MS);
            list = browser.get("/backups");
        }
        browser.save("/backups/" + list.first(DAY.pattern()), saved.resolve("backup.zip"));
        browser.save("/records/year?from=last-12-months", saved.resolve("record.zip"));
    }

    private void openRecord(Program program, Path saved) throws IOException, InterruptedException {
        Path record = saved.resolve("record.zip");
        String code = program.logged(CODE);
        withoutAdministrator = restore(program, code, Map.of(), record);
        Map<String, String> administrator = Map.of(
                "administrator.name",
                "Ada New",
                "administrator.signInName",
                "ada.new",
                "administrator.password",
                PASSWORD);
        Path broken = altered(record, saved.resolve("altered.zip"));
        alteredWithoutAdministrator = restore(program, code, Map.of(), broken);
        altered = restore(program, code, administrator, broken);
        ofTheForm = restore(program, code, administrator, record);
        addSupervisor(program);
    }

    private static void addSupervisor(Program program) throws IOException, InterruptedException {
        PlainBrowser browser = new PlainBrowser(program.address());
        browser.signIn("ada.new", PASSWORD);
        browser.post(
                "/people/new",
                Map.of(
                        "_csrf",
                        browser.get("/people/new").field("_csrf"),
                        "name",
                        "Sue New",
                        "signInName",
                        "sue.new",
                        "password",
                        PASSWORD,
                        "roles",
                        "SUPERVISOR"));
    }

    private static Page restore(Program program, String code, Map<String, String> administrator, Path file)
            throws IOException, InterruptedException {
        PlainBrowser browser = new PlainBrowser(program.address());
        Map<String, String> form = new HashMap<>(administrator);
        form.putAll(
                Map.of("code", code, "_csrf", browser.get("/first-run/restore").field("_csrf")));
        return browser.post("/first-run/restore", form, file);
    }

    private static Path altered(Path file, Path to) throws IOException {
        byte[] all = Files.readAllBytes(file);
        all[all.length / 2] ^= 1;
        return Files.write(to, all);
    }

    private static void wipe(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(one -> !one.equals(folder))
                    .sorted(Comparator.reverseOrder())
                    .toList()) {
                Files.delete(file);
            }
        }
    }

    @Test
    void saysWhatItHasTakenIn() {
        assertThat(takenIn).contains("backup.zip", "rows of");
    }

    @Test
    void everyPageIsTheSameAgain() {
        assertThat(restored)
                .hasSize(PAGES.size())
                .allSatisfy(pair -> assertThat(pair.given()).isNotEmpty().isEqualTo(pair.original()));
    }

    /** As a service keeps its options when it is started again. */
    @Test
    void isNotTakenInTwice() {
        assertThat(refused).contains("This installation has been begun already. Nothing was changed.");
    }

    @Test
    void aRecordAsksForAnAdministrator() {
        assertThat(withoutAdministrator.body()).contains("in which nobody has a password");
    }

    @Test
    void anAlteredRecordIsRefusedWithWords() {
        assertThat(altered.body()).contains("Something in the file is not as it was written");
        assertThat(alteredWithoutAdministrator.body()).contains("Something in the file is not as it was written");
    }

    @Test
    void aRecordIsTakenInByThePage() {
        assertThat(ofTheForm.location()).contains("/sign-in?record");
    }

    /** As a supervisor sees them whom the new administrator has added. What is about who looks stands outside the page's main part. */
    @Test
    void aRecordShowsTheSamePages() {
        assertThat(ofTheRecord)
                .hasSize(PAGES.size())
                .filteredOn(pair -> !pair.path().equals(READINGS))
                .allSatisfy(pair -> assertThat(main(pair.given())).isNotEmpty().isEqualTo(main(pair.original())));
    }

    /** All that are of its time; what is older stays behind but for what is still named. */
    @Test
    void aRecordShowsTheReadingsOfItsTime() {
        assertThat(ofTheRecord)
                .filteredOn(pair -> pair.path().equals(READINGS))
                .singleElement()
                .satisfies(pair -> assertThat(pair.given().lines())
                        .hasSizeGreaterThan(1)
                        .isSubsetOf(pair.original().lines().toList()));
    }

    private static String main(String body) {
        return body.replaceAll("(?s)^.*<main|</main>.*$", "");
    }
}
