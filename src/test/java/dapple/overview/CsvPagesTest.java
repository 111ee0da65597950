package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.animal.AnimalKeeping;
import dapple.animal.AnimalState;
import dapple.animal.BornAbout;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.animal.Sex;
import dapple.lamp.LampClass;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.Asking;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.Year;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;

/** Every list as a file, read back by another library than the one that writes. */
@PagesTest
class CsvPagesTest {
    private static final String FACTOR = "1.25";

    @Autowired
    private TestCollection collection;

    @Autowired
    private Meters meters;

    @Autowired
    private Lamps lamps;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private Asking everybody;
    private Home home;
    private MeterFacts meter;

    @BeforeEach
    void furnish() {
        site = collection.site();
        SignedIn me = collection.person(site, Role.values());
        everybody = new Asking(pages, collection.as(me));
        SpeciesFacts species = collection.species(
                site, me, "Pogona vitticeps", UvZone.withCode("SUNBEAM-3").orElseThrow());
        home = collection.home(site, me, species);
        meter = collection.meter(site);
        meters.calibrate(
                site.id(),
                meter.id(),
                new NewCalibration(
                        clock.instant().minus(Duration.ofDays(30)),
                        Double.parseDouble(FACTOR),
                        LocalDate.now(clock).plusYears(1),
                        "=certificate 7"),
                me.personId());
        collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
    }

    @Test
    void everyListIsOfferedOnItsPageAndComesWithItsRows() throws Exception {
        read("3.4");
        String animal = "/animals/" + home.animal().id();
        for (String list : List.of(
                "/animals",
                "/circuits",
                "/lamps",
                "/lamp-models",
                "/meters",
                "/people",
                "/review",
                "/rooms",
                "/rounds",
                "/targets",
                animal,
                animal + "/stays",
                animal + "/events",
                "/meters/" + meter.id(),
                readings())) {
            everybody.see(list).andExpect(content().string(containsString("href=\"" + list + ".csv\"")));
            assertThat(sent(list + ".csv").getContentType()).as(list).isEqualTo("text/csv;charset=UTF-8");
        }
    }

    @Test
    void theFileIsNamedForSiteListAndDay() throws Exception {
        String day = LocalDate.now(clock.withZone(site.timeZone())).toString();
        assertThat(sent("/lamps.csv").getHeader("Content-Disposition"))
                .startsWith("attachment")
                .contains(
                        "dapple-" + site.name().toLowerCase(Locale.ROOT).replace(' ', '-') + "-lamps-" + day + ".csv");
    }

    @Test
    void aReadingTellsOfItsMeterItsCalibrationAndItsLimits() throws Exception {
        read("4.0");

        Map<String, String> row = table(readings() + ".csv").rows().get(0);

        assertThat(row)
                .containsEntry("Point", "P1")
                .containsEntry("Quantity", "UV index")
                .containsEntry("Amount, as the meter showed it", "4")
                .containsEntry("Unit", "UVI")
                .containsEntry("Meter", meter.code())
                .containsEntry("Calibration factor, true over shown", FACTOR)
                .containsEntry("Certificate", "'=certificate 7")
                .containsEntry("Amount, corrected", "5")
                .containsEntry("Species", "Pogona vitticeps")
                .containsEntry("Counts", "yes")
                .containsEntry("Withdrawn at", "");
        assertThat(row.get("Limit, high, in the unit")).isNotEmpty();
        assertThat(row.get("Verdict")).isNotEmpty();
    }

    @Test
    void itsTimesAreReadByTheStandardsReader() throws Exception {
        read("4.0");

        String taken = table(readings() + ".csv").column("Taken at").get(0);

        assertThat(OffsetDateTime.parse(taken).toInstant()).isCloseTo(clock.instant(), within(1, ChronoUnit.MINUTES));
    }

    @Test
    void aCorrectionSaysWhatItReplacesAndWhy() throws Exception {
        String first = read("3.4");
        everybody.send(
                "/readings/" + first + "/correction",
                Map.of("key", UUID.randomUUID().toString(), "amount", "4.3", "reason", "a, \"typed\" wrong"));

        List<Map<String, String>> rows = table(readings() + ".csv").rows();

        assertThat(rows).hasSize(2);
        assertThat(rows.get(0))
                .containsEntry("Counts", "no")
                .containsEntry("Replaced by reading no.", rows.get(1).get("Reading no."));
        assertThat(rows.get(1))
                .containsEntry("Replaces reading no.", first)
                .containsEntry("Amount that it replaces", "3.4")
                .containsEntry("Corrected because", "a, \"typed\" wrong");
    }

    @Test
    void readingsAreRestrictedAsThePageIs() throws Exception {
        read("3.4");

        assertThat(table(readings() + ".csv?quantity=ILLUMINANCE").rows()).isEmpty();
        assertThat(table(readings() + ".csv?point=" + home.basking().id()).rows())
                .hasSize(1);
        everybody
                .see(readings() + "?quantity=ILLUMINANCE&point=")
                .andExpect(content()
                        .string(containsString("href=\"" + readings() + ".csv?quantity=ILLUMINANCE&amp;point=\"")));
    }

    @Test
    void whatWasAskedWithIsNeverMarkup() throws Exception {
        everybody
                .see("/animals?text=%22%3E%3Cscript%3E")
                .andExpect(content().string(not(containsString("\"><script>"))));
    }

    @Test
    void allAnimalsComeAndNotOnlyThoseOfAPage() throws Exception {
        SignedIn me = collection.person(site, Role.KEEPER);
        for (int more = 0; more < 60; more++) {
            collection.home(site, me, collection.species(site, "Species no " + more));
        }

        assertThat(table("/animals.csv").rows()).hasSize(61);
    }

    @Test
    void animalsAreRestrictedAsThePageIs() throws Exception {
        assertThat(table("/animals.csv?text=no+such").rows()).isEmpty();
        assertThat(table("/animals.csv?text=" + home.animal().accessionNumber()).column("Name"))
                .containsExactly(home.animal().name());
    }

    @Test
    void anAnimalSaysWhenItWasBorn() throws Exception {
        SignedIn me = collection.person(site, Role.SUPERVISOR);
        keeping.add(
                site.id(),
                new AnimalState(
                        "2019-0044",
                        "Ilse",
                        home.animal().speciesId(),
                        Sex.UNKNOWN,
                        Optional.of(new BornAbout(Year.of(2019), Optional.empty())),
                        Pigment.NORMAL,
                        Reach.EVERYWHERE,
                        ""),
                me.personId());

        assertThat(table("/animals.csv?text=Ilse").column("Born or hatched")).containsExactly("2019");
        assertThat(table("/animals.csv?text=" + home.animal().accessionNumber()).column("Born or hatched"))
                .containsExactly("");
    }

    @Test
    void aLampSaysWhenItWasBought() throws Exception {
        long model = collection.lampModel(site, LampClass.TUBE_T5).id();
        lamps.add(
                site.id(),
                new NewLamp("L900", model, Optional.of(0.0), Optional.of(LocalDate.of(2026, 3, 2)), "shelf"));

        assertThat(table("/lamps.csv").column("Bought on")).containsExactlyInAnyOrder("", "2026-03-02");
    }

    /** 2.9 to 7.4, and the ceiling of 8.0, are those of zone 3 [baines2016]. */
    @Test
    void aLimitInReviewIsNumbers() throws Exception {
        read("9.0");

        assertThat(table("/review.csv").rows().get(0))
                .containsEntry("Limit, low, in the unit", "2.9")
                .containsEntry("Limit, high, in the unit", "7.4")
                .containsEntry("Ceiling, in the unit of the amount", "8");
    }

    @Test
    void aMeterStandsWithTheCalibrationThatHolds() throws Exception {
        assertThat(table("/meters.csv").rows().get(0))
                .containsEntry("Meter", meter.code())
                .containsEntry("Certificate", "'=certificate 7");
        assertThat(table("/meters/" + meter.id() + ".csv").column("Calibration factor, true over shown"))
                .containsExactly(FACTOR);
    }

    @Test
    void anotherSiteFindsNothing() throws Exception {
        Asking stranger = new Asking(pages, collection.as(collection.person(collection.site(), Role.values())));
        stranger.see(readings() + ".csv").andExpect(status().isNotFound());
        assertThat(CsvTable.of(stranger.see("/lamps.csv")
                                .andReturn()
                                .getResponse()
                                .getContentAsByteArray())
                        .rows())
                .isEmpty();
    }

    private String readings() {
        return "/enclosures/" + home.enclosureId() + "/readings";
    }

    private String read(String amount) throws Exception {
        String path = "/enclosures/" + home.enclosureId() + "/visits/" + UUID.randomUUID() + "/points/"
                + home.basking().id();
        String redirect = everybody
                .send(
                        path,
                        Map.of(
                                "key",
                                UUID.randomUUID().toString(),
                                "meterId",
                                String.valueOf(meter.id()),
                                "amount",
                                amount))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Optional.ofNullable(redirect).orElseThrow().replace("/readings/", "");
    }

    private MockHttpServletResponse sent(String path) throws Exception {
        return everybody.see(path).andExpect(status().isOk()).andReturn().getResponse();
    }

    private CsvTable table(String path) throws Exception {
        return CsvTable.of(sent(path).getContentAsByteArray());
    }
}
