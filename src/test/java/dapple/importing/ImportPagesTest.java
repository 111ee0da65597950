package dapple.importing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.light.judging.PointRole;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class ImportPagesTest {
    private static final Duration LONGEST = Duration.ofSeconds(30);
    private static final String FLAT = """
            Enclosure,Species,Date,Basking UVI,Shade UVI,Meter,By
            E1,Pogona vitticeps,2025-11-13,3.4,0.1,M1,Jo
            E2,Pogona vitticeps,2025-11-14,4.1,0.2,M1,Jo
            """;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Lamps lamps;

    @Autowired
    private ImportJobs jobs;

    @Autowired
    private Runs runs;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
    }

    private ResultActions ask(MockHttpServletRequestBuilder request, SignedIn who) throws Exception {
        return pages.perform(request.with(collection.as(who)).with(csrf()));
    }

    private long send(byte[] bytes) throws Exception {
        String path = Optional.ofNullable(pages.perform(multipart("/records/import")
                                .file(new MockMultipartFile("file", "weeks.csv", "text/csv", bytes))
                                .with(collection.as(supervisor))
                                .with(csrf()))
                        .andExpect(status().is3xxRedirection())
                        .andReturn()
                        .getResponse()
                        .getRedirectedUrl())
                .orElseThrow();
        return Long.parseLong(path.replaceAll("\\D", ""));
    }

    private long send(String text) throws Exception {
        return send(text.getBytes(StandardCharsets.UTF_8));
    }

    private long tried(String text) throws Exception {
        long run = send(text);
        attempt(run);
        return run;
    }

    private void attempt(long run) throws Exception {
        ask(post("/records/import/" + run + "/columns"), supervisor).andExpect(status().is3xxRedirection());
        await(run);
    }

    private void take(long run, boolean leaveOut) throws Exception {
        ask(post("/records/import/" + run).param("leaveOut", String.valueOf(leaveOut)), supervisor)
                .andExpect(status().is3xxRedirection());
        await(run);
    }

    private void await(long run) throws InterruptedException {
        Instant latest = Instant.now().plus(LONGEST);
        while (jobs.find(run).orElseThrow().isUnderWay()) {
            assertThat(Instant.now()).isBefore(latest);
            Thread.sleep(20);
        }
    }

    private Done imported(String text) throws Exception {
        long run = tried(text);
        take(run, false);
        return runs.get(site.id(), run).done().orElseThrow();
    }

    @Test
    void sayWhatAColumnMeans() throws Exception {
        ask(get("/records/import/" + send(FLAT)), supervisor)
                .andExpect(content().string(containsString("UV index, basking")));
    }

    @Test
    void tryStoresNothing() throws Exception {
        tried(FLAT);
        assertThat(enclosures.all(site.id())).isEmpty();
    }

    @Test
    void tryTellsWhatWouldBeStored() throws Exception {
        ask(get("/records/import/" + tried(FLAT) + "/try"), supervisor)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("E1, E2")))
                .andExpect(content().string(containsString("4 readings")));
    }

    @Test
    void tryNamesTheColumnsThatAreNotRead() throws Exception {
        long run = tried("Enclosure,Favourite food\nE1,crickets\n");
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(containsString("not read: Favourite food.")));
    }

    @Test
    void importEntersTheEnclosures() throws Exception {
        imported(FLAT);
        assertThat(enclosures.all(site.id())).extracting(EnclosureFacts::code).containsExactly("E1", "E2");
    }

    @Test
    void importEntersThePointsThatColumnsName() throws Exception {
        imported(FLAT);
        long first = enclosures.all(site.id()).get(0).id();
        assertThat(enclosures.pointsOf(site.id(), first))
                .extracting(PointFacts::role)
                .containsExactly(PointRole.BASKING, PointRole.SHADE);
    }

    @Test
    void aWideSheetEntersTheEnclosuresThatItsColumnsName() throws Exception {
        Done done =
                imported("Woche;G1 Sonnenplatz UVI;G1 Schatten UVI;Köcher Sonnenplatz UVI\n13.11.2025;3,4;0,1;4,2\n");
        assertThat(enclosures.all(site.id())).extracting(EnclosureFacts::code).containsExactly("G1", "Köcher");
        assertThat(done.stored()).isEqualTo(3);
    }

    @Test
    void aWideSheetGoesToTheEnclosuresThatAreThere() throws Exception {
        imported("Enclosure,Standard points\nE-01,yes\nKöcher,yes\n");
        imported("Week,E-01 basking,Köcher basking UVI\n2025-11-13,3.4,4.2\n");
        assertThat(enclosures.all(site.id())).extracting(EnclosureFacts::code).containsExactly("E-01", "Köcher");
    }

    @Test
    void whatIsOnlySuggestedIsNotRemembered() throws Exception {
        imported("Week,E1 basking\n2025-11-13,3.4\n");
        assertThat(runs.columns(site.id())).isEmpty();
    }

    @Test
    void whatIsChosenIsRemembered() throws Exception {
        long run = send("Week,E1 basking\n2025-11-13,3.4\n");
        ask(post("/records/import/" + run + "/columns").param("means-0-0", "-"), supervisor);
        await(run);
        assertThat(runs.columns(site.id())).containsOnlyKeys("week");
    }

    @Test
    void importStoresTheReadings() throws Exception {
        assertThat(imported(FLAT).stored()).isEqualTo(4);
    }

    @Test
    void whatWasDoneIsTold() throws Exception {
        long run = tried(FLAT);
        take(run, false);
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(containsString("4 readings were added")));
    }

    @Test
    void theSameSheetTwiceIsOnce() throws Exception {
        imported(FLAT);
        Done again = imported(FLAT);
        assertThat(again.stored()).isZero();
    }

    @Test
    void theSameSheetTwiceEntersNothingNew() throws Exception {
        imported(FLAT);
        Done again = imported(FLAT);
        assertThat(again.created()).allSatisfy(one -> assertThat(one.fresh()).isZero());
    }

    @Test
    void aBadRowIsToldByItsLine() throws Exception {
        long run = tried(FLAT + "E3,Pogona vitticeps,2025-11-15,much,0.1,M1,Jo\n");
        assertThat(runs.get(site.id(), run).tried().orElseThrow().badRows())
                .singleElement()
                .satisfies(bad -> assertThat(bad.line()).isEqualTo(4));
    }

    @Test
    void withABadRowNothingIsStored() throws Exception {
        long run = tried(FLAT + "E3,Pogona vitticeps,2025-11-15,much,0.1,M1,Jo\n");
        ask(post("/records/import/" + run), supervisor).andExpect(status().isConflict());
        assertThat(enclosures.all(site.id())).isEmpty();
    }

    @Test
    void badRowsAreLeftOutWhenAsked() throws Exception {
        long run = tried(FLAT + "E3,Pogona vitticeps,2025-11-15,much,0.1,M1,Jo\n");
        take(run, true);
        assertThat(enclosures.all(site.id())).hasSize(2);
    }

    @Test
    void aNameThatIsNearlyASpeciesIsAsked() throws Exception {
        long run = tried("Enclosure,Species\nE1,Pogona viticeps\n");
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(containsString("<option value=\"Pogona vitticeps\">")));
    }

    @Test
    void aNameThatWasAskedIsTakenAsSaid() throws Exception {
        long run = tried("Enclosure,Species\nE1,Pogona viticeps\n");
        ask(
                post("/records/import/" + run + "/names")
                        .param("typed", "Pogona viticeps")
                        .param("meant", "Pogona vitticeps"),
                supervisor);
        await(run);
        assertThat(runs.get(site.id(), run).tried().orElseThrow().bad()).isZero();
    }

    private void say(long run, String meant) throws Exception {
        ask(
                post("/records/import/" + run + "/names")
                        .param("typed", "Pogona viticeps")
                        .param("meant", meant),
                supervisor);
        await(run);
    }

    @Test
    void whatANameMeansIsRememberedAndTold() throws Exception {
        say(tried("Enclosure,Species\nE1,Pogona viticeps\n"), "Pogona vitticeps");
        long next = tried("Enclosure,Species\nE2,Pogona viticeps\n");
        assertThat(runs.get(site.id(), next).tried().orElseThrow().bad()).isZero();
        ask(get("/records/import/" + next + "/try"), supervisor)
                .andExpect(content().string(containsString("Pogona viticeps is taken as Pogona vitticeps")))
                .andExpect(
                        content().string(containsString("<option value=\"Pogona vitticeps\" selected=\"selected\">")));
    }

    @Test
    void whatIsNotSaidAnyLongerIsAskedAgain() throws Exception {
        say(tried("Enclosure,Species\nE1,Pogona viticeps\n"), "Pogona vitticeps");
        say(tried("Enclosure,Species\nE2,Pogona viticeps\n"), "");
        long next = tried("Enclosure,Species\nE3,Pogona viticeps\n");
        assertThat(runs.get(site.id(), next).tried().orElseThrow().bad()).isEqualTo(1);
    }

    @Test
    void onlyWhatWasOfferedIsTaken() throws Exception {
        long run = tried("Enclosure,Species\nE1,Pogona viticeps\n");
        say(run, "Something else");
        assertThat(runs.get(site.id(), run).tried().orElseThrow().bad()).isEqualTo(1);
    }

    @Test
    void animalsOfASpeciesThatIsAskedAreToldWithIt() throws Exception {
        long run = tried("Animal,Species\nFreda,Pogona viticeps\nOtto,Pogona viticeps\nIda,Pogona viticeps\n");
        assertThat(runs.get(site.id(), run).tried().orElseThrow().bad()).isEqualTo(3);
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(containsString("3 bad rows")))
                .andExpect(content().string(containsString("<td>2 to 4</td>")))
                .andExpect(content().string(not(containsString("is needed"))));
    }

    @Test
    void aPointWithoutARoleIsToldOnceForAllItsRows() throws Exception {
        long run = tried("Date,G1 P3 UVI\n2025-11-13,3.4\n2025-11-20,3.3\n");
        assertThat(runs.get(site.id(), run).tried().orElseThrow().badRows())
                .extracting(BadRow::line)
                .containsExactly(2L, 3L);
    }

    /** The shelf of somebody who never wrote down for how long lamps have burnt. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Lamp,Model,Lamp class\nL1,Slim 24 W,tube T5\n",
                "Lamp,Model,Lamp class,Burn hours\nL1,Slim 24 W,tube T5,\n"
            })
    void aLampOfWhichNobodyKnowsHowLongItHasBurntComesIn(String shelf) throws Exception {
        imported(shelf);
        assertThat(lamps.all(site.id()))
                .singleElement()
                .extracting(LampFacts::tag, LampFacts::burnHoursAtEntry)
                .containsExactly("L1", Optional.empty());
        assertThat(imported(shelf).addedSomething()).isFalse();
    }

    @Test
    void aSheetOfAnimalsSaysNothingOfReadings() throws Exception {
        long run = tried("Animal,Species\nFreda,Pogona vitticeps\n");
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(not(containsString("No readings"))));
        take(run, false);
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(containsString("This is new:")))
                .andExpect(content().string(not(containsString("No reading was added"))));
    }

    @Test
    void whenItIsDoneItSaysWhatIsNewAndWhatWasLeftOut() throws Exception {
        long run = tried(FLAT + "E3,Pogona vitticeps,2025-11-15,much,0.1,M1,Jo\n");
        take(run, true);
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(containsString("What weeks.csv did")))
                .andExpect(content()
                        .string(containsString("4 readings were added in 2 visits; none was on record already")))
                .andExpect(content().string(containsString("One bad row was left out.")))
                .andExpect(content().string(containsString("E1, E2")));
    }

    @Test
    void whatIsOnRecordOtherwiseIsToldWhenItIsDone() throws Exception {
        imported(FLAT);
        long run = tried(FLAT.replace("3.4", "3.6"));
        take(run, false);
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(containsString("One reading is on record otherwise")))
                .andExpect(content().string(containsString("the sheet says 3.6, the record 3.4")));
    }

    @Test
    void filesThatAreNoSheetsAreNamed() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("basking.jpg"));
            zip.write(new byte[] {-1, 0, 1});
            zip.putNextEntry(new ZipEntry("weeks.csv"));
            zip.write(FLAT.getBytes(StandardCharsets.UTF_8));
        }
        long run = send(bytes.toByteArray());
        ask(get("/records/import/" + run), supervisor)
                .andExpect(content().string(containsString("No sheet, so left out: basking.jpg.")));
        attempt(run);
        ask(get("/records/import/" + run + "/try"), supervisor)
                .andExpect(content().string(containsString("No sheet, so left out: basking.jpg.")))
                .andExpect(content().string(containsString("4 readings")));
    }

    @Test
    void aGermanSheetIsRead() throws Exception {
        String german = "Messungen Süd\n\nGehege;Datum;UVI Sonnenplatz;Messgerät\nKöcher;13.11.2025;3,4;M1\n";
        long run = send(german.getBytes(Charset.forName("windows-1252")));
        attempt(run);
        take(run, false);
        assertThat(enclosures.all(site.id())).extracting(EnclosureFacts::code).containsExactly("Köcher");
    }

    @Test
    void anotherSiteDoesNotFindIt() throws Exception {
        long run = send(FLAT);
        SignedIn other = collection.person(collection.site(), Role.SUPERVISOR);
        ask(get("/records/import/" + run), other).andExpect(status().isNotFound());
    }

    @Test
    void aKeeperMayNotImport() throws Exception {
        ask(get("/records/import"), collection.person(site, Role.KEEPER)).andExpect(status().isForbidden());
    }

    @Test
    void onlyAnAdministratorBringsInPeople() throws Exception {
        long run = tried("Sign-in name,Full name,Roles\nnew.keeper,New Keeper,keeper\n");
        assertThat(runs.get(site.id(), run).tried().orElseThrow().bad()).isEqualTo(1);
    }

    @Test
    void whatIsNoSheetComesBackWithAReason() throws Exception {
        pages.perform(multipart("/records/import")
                        .file(new MockMultipartFile("file", "photo.png", "image/png", new byte[] {1, 2, 3, 0, 5}))
                        .with(collection.as(supervisor))
                        .with(csrf()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("This is no text.")));
    }

    @Test
    void whatIsGivenUpIsNotTried() throws Exception {
        long run = send(FLAT);
        ask(post("/records/import/" + run + "/drop"), supervisor);
        ask(post("/records/import/" + run + "/columns"), supervisor).andExpect(status().isConflict());
    }

    @Test
    void emptySheetsHaveNamesThatAreKnown() throws Exception {
        ask(get("/records/import/templates/reading.csv"), supervisor)
                .andExpect(content().string(containsString("Enclosure,Point,Meter,Date,Time")))
                .andExpect(content().string(not(containsString("\nE"))));
    }
}
