package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesRegex;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ReferenceSpectra;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class LampModelPagesTest {
    private static final Map<String, String> MODEL = Map.of(
            "version", "0",
            "name", "Bright tube",
            "lampClass", "TUBE_T5",
            "watts", "24",
            "shapeKind", "LINE",
            "lengthMetres", "0.549",
            "lobe", "1.5",
            "spill", "0.05");

    private static final Map<String, String> OUTPUT = Map.of(
            "version", "0",
            "reading", "9000",
            "distanceMetres", "0.3",
            "uncertaintyPercent", "10",
            "mark", "PUBLISHED",
            "source", "data sheet of March 2026");

    @Autowired
    private TestCollection collection;

    @Autowired
    private Lamps lamps;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn lead;
    private Asking asking;
    private LampModelFacts model;
    private String page;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        asking = new Asking(pages, collection.as(lead));
        model = collection.lampModel(site, LampClass.TUBE_T5);
        page = "/lamp-models/" + model.id();
    }

    @Test
    void whatAModelGivesComesAsAFile() throws Exception {
        asking.send(page + "/outputs/UV_INDEX", OUTPUT);
        asking.see(page).andExpect(content().string(containsString("href=\"" + page + ".csv\"")));
        CsvTable table =
                CsvTable.of(asking.see(page + ".csv").andReturn().getResponse().getContentAsByteArray());
        assertThat(table.column("Model")).isNotEmpty().containsOnly(model.name());
        assertThat(table.column("Quantity")).contains("UV index");
    }

    @Test
    void theClassIsAskedFirst() throws Exception {
        asking.see("/lamp-models/new").andExpect(content().string(containsString("metal halide")));
    }

    @Test
    void whatIsUsualIsShownWithItsMarkAndNotEntered() throws Exception {
        asking.see("/lamp-models/new?lampClass=TUBE_T5")
                .andExpect(content().string(containsString("from memory, unverified")))
                .andExpect(content().string(containsString("2 to 5")))
                .andExpect(content().string(containsString("fragile; mercury")))
                .andExpect(content().string(containsString("name=\"watts\" value=\"\"")));
    }

    @Test
    void aNewModelIsListedWithItsShape() throws Exception {
        asking.send("/lamp-models/new", MODEL).andExpect(status().is3xxRedirection());
        asking.see("/lamp-models").andExpect(content().string(containsString("Bright tube")));
        LampModelFacts added = lamps.models(site.id()).get(0);
        asking.see("/lamp-models/" + added.id())
                .andExpect(content().string(containsString(", length 0.549 m")))
                .andExpect(content().string(containsString(", reflector of lobe 1.5 and spill 0.05")))
                .andExpect(content().string(containsString("24 W")));
    }

    @Test
    void aModelPostedTwiceIsStoredOnce() throws Exception {
        asking.send("/lamp-models/new", MODEL);
        asking.send("/lamp-models/new", MODEL)
                .andExpect(content().string(containsString("There is a lamp model of this name already.")));
    }

    @ParameterizedTest
    @CsvSource({
        "name, '', Enter something here",
        "watts, NaN, 'Enter a number, for example 3.0'",
        "watts, 1e400, 'Enter a number, for example 3.0'",
        "watts, 0, Enter a number of at least 0.1.",
        "lengthMetres, '', This shape needs it.",
        "lengthMetres, -1, Enter a number of at least 0.001.",
        "widthMetres, 0.1, This shape has none: leave it empty.",
        "beamAngleDegrees, 30, This shape has none: leave it empty.",
        "lobe, '', A spill needs the lobe of the reflector too.",
        "spill, 2, Enter a number of at most 1."
    })
    void aWrongModelComesBackAsTyped(String field, String typed, String message) throws Exception {
        asking.send("/lamp-models/new", MODEL, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(message)))
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"" + typed + "\"")))
                .andExpect(content().string(containsString("from memory, unverified")));
    }

    @ParameterizedTest
    @CsvSource({"shapeKind, ''", "shapeKind, ROUND", "lampClass, CANDLE", "lampClass, ''"})
    void aWrongChoiceIsAskedForAgain(String field, String typed) throws Exception {
        asking.send("/lamp-models/new", MODEL, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")));
    }

    @Test
    void aStaleModelComesBackWithBothStates() throws Exception {
        asking.send(page + "/edit", MODEL, "name", "FIRST").andExpect(redirectedUrl(page));
        asking.send(page + "/edit", MODEL, "name", "SECOND")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("<dd>FIRST</dd>")))
                .andExpect(content().string(containsString("value=\"SECOND\"")))
                .andExpect(content().string(containsString("name=\"version\" value=\"1\"")));
    }

    @Test
    void anEditShowsWhatIsStored() throws Exception {
        asking.see(page + "/edit")
                .andExpect(content().string(containsString("value=\"0.55\"")))
                .andExpect(content().string(containsString("value=\"0.05\"")));
    }

    @Test
    void aStatedOutputStandsWithItsSource() throws Exception {
        asking.send(page + "/outputs/ILLUMINANCE", OUTPUT).andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content().string(containsString("9000 lx at 0.3 m, standard uncertainty 10")))
                .andExpect(content().string(containsString("data sheet of March 2026")));
    }

    @ParameterizedTest
    @CsvSource({
        "reading, NaN",
        "reading, 0",
        "distanceMetres, 1e400",
        "uncertaintyPercent, -1",
        "mark, RUMOUR",
        "mark, COMPUTED",
        "source, ''"
    })
    void aWrongOutputComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(page + "/outputs/ILLUMINANCE", OUTPUT, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")));
    }

    @Test
    void aStaleOutputComesBackWithBothStates() throws Exception {
        asking.send(page + "/outputs/ILLUMINANCE", OUTPUT, "reading", "8000").andExpect(redirectedUrl(page));
        asking.send(page + "/outputs/ILLUMINANCE", OUTPUT, "reading", "7000")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("8000 lx at 0.3 m")))
                .andExpect(content().string(containsString("value=\"7000\"")));
    }

    @Test
    void anOutputTakenBackIsNotShown() throws Exception {
        asking.send(page + "/outputs/UV_INDEX/removal", Map.of("version", "1")).andExpect(redirectedUrl(page));
        asking.see(page).andExpect(content().string(containsString("Nothing is known of what it gives.")));
    }

    /**
     * The standard sun as a file. UV index 3.693; 10 kJ/m² of UVA, 45.42 W/m², after 220 s = 3.67 min, the first limit of
     * a person: as another program integrates ASTM G173-03, see sun-published.csv of the spectra.
     */
    @Test
    void theStandardSunAsAFileHasTheSunsUvIndex() throws Exception {
        upload(sun()).andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content().string(containsString("<dd>3.69, computed from spectrum</dd>")))
                .andExpect(content().string(containsString("3.67 min a day")))
                .andExpect(content().string(containsString("<dd>none</dd>")))
                .andExpect(content().string(not(containsString("data-caution=\"SPECTRUM\""))))
                .andExpect(content().string(not(containsString("data-caution=\"SHORT_WAVES\""))));
    }

    /** Percent and tolerance of the same table; half a unit of the page's last digit is added to the tolerance. */
    @ParameterizedTest
    @CsvSource({
        "'UVB, 280 to 315 nm', 0.0682, 0.0002",
        "'UVA, 315 to 400 nm', 4.54, 0.015",
        "'visible, 380 to 780 nm', 53.4, 0.18",
        "'IR-A, 780 to 1400 nm', 32.4, 0.15",
        "'IR-B, 1400 to 3000 nm', 10.2, 0.12"
    })
    void theStandardSunAsAFileHasTheSunsFractions(String band, double percent, double tolerance) throws Exception {
        upload(sun());
        String shown = asking.see(page).andReturn().getResponse().getContentAsString();
        Matcher row = Pattern.compile(
                        band + "</th>\\s*<td>[^<]*</td>\\s*<td>([0-9.]+)\u00a0%</td>\\s*<td>([0-9.]+)\u00a0%</td>")
                .matcher(shown);
        assertThat(row.find()).isTrue();
        assertThat(Double.parseDouble(row.group(1))).isCloseTo(percent, within(tolerance));
        assertThat(row.group(2)).isEqualTo(row.group(1));
    }

    /** 3.0 of the model times 45.42 W/m² over 3.693 of the sun, as above: 36.9 W/m². */
    @Test
    void whatFollowsFromASpectrumIsShownAsComputed() throws Exception {
        upload(sun());
        asking.see(page)
                .andExpect(content().string(containsString("36.9 W/m² at 0.3 m")))
                .andExpect(content().string(containsString("computed from spectrum")));
    }

    @Test
    void whatASpectrumDoesNotCoverIsNotZero() throws Exception {
        upload("290,0\n300,0.01\n400,0.02\n800,0.03");
        asking.see(page)
                .andExpect(content().string(matchesRegex("(?s).*IR-A, 780 to 1400 nm</th>\\s*<td>not covered</td>.*")))
                .andExpect(content().string(containsString("not known: the spectrum begins above 280 nm")));
    }

    @Test
    void radiationBelow290IsALampFault() throws Exception {
        upload("250,0\n254,0.01\n258,0\n300,0.01\n800,0.01");
        asking.see(page)
                .andExpect(content().string(containsString("<dd>lamp fault: ")))
                .andExpect(content().string(containsString("data-caution=\"SHORT_WAVES\"")));
        asking.see("/lamps/new").andExpect(content().string(containsString("(lamp fault: radiation below 290 nm)")));
    }

    @Test
    void aSpectrumIsRefusedWithTheLineAtFaultAndKeptAsText() throws Exception {
        upload("nm,W/(m2 nm)\n300,0.5\n299,0.4\n")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Line 3: The wavelengths must ascend")))
                .andExpect(content().string(containsString("299,0.4")))
                .andExpect(content().string(containsString("value=\"maker, at 0.3 m\"")));
    }

    @Test
    void noSpectrumAtAllIsAskedFor() throws Exception {
        upload("").andExpect(content().string(containsString("Choose a file, or enter the text.")));
    }

    @Test
    void aFileThatIsTooLargeIsRefused() throws Exception {
        upload("#".repeat(200_001)).andExpect(content().string(containsString("at most 200,000 characters")));
    }

    @Test
    void aStaleSpectrumComesBackWithBothStates() throws Exception {
        upload("300,1\n400,1").andExpect(redirectedUrl(page));
        upload("300,2\n400,2")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("300,2")))
                .andExpect(content().string(containsString("Spectrum on file since")));
    }

    @Test
    void aReportEndsTheCaution() throws Exception {
        Map<String, String> report =
                Map.of("version", "0", "title", "Spectral report 12", "day", "2026-02-03", "by", "a laboratory");
        asking.send(page + "/report", report, "day", "2999-01-01")
                .andExpect(content().string(containsString("Enter a day that is not in the future.")));
        asking.send(page + "/report", report).andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content()
                        .string(containsString("Report on file: Spectral report 12, 3 Feb 2026, by a laboratory")))
                .andExpect(content().string(not(containsString("data-caution=\"SPECTRUM\""))));
    }

    @Test
    void aWaiverIsSignedWithNameReasonAndTime() throws Exception {
        asking.send(page + "/waiver", Map.of("version", "0", "reason", ""))
                .andExpect(content().string(containsString("id=\"reason-wrong\"")));
        asking.send(page + "/waiver", Map.of("version", "0", "reason", "used for years"))
                .andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content().string(containsString("Waived by " + lead.fullName())))
                .andExpect(content().string(containsString("used for years")))
                .andExpect(content().string(not(containsString("data-caution=\"SPECTRUM\""))));
    }

    @Test
    void aWaiverTakenBackBringsTheCautionBack() throws Exception {
        asking.send(page + "/waiver", Map.of("version", "0", "reason", "used for years"));
        asking.send(page + "/waiver/removal", Map.of("version", "1")).andExpect(redirectedUrl(page));
        asking.see(page).andExpect(content().string(containsString("data-caution=\"SPECTRUM\"")));
    }

    @Test
    void aStaleRemovalIsRefused() throws Exception {
        asking.send(page + "/waiver", Map.of("version", "0", "reason", "used for years"));
        asking.send(page + "/waiver/removal", Map.of("version", "0")).andExpect(status().isConflict());
    }

    private static String sun() {
        return ReferenceSpectra.sun("global_tilt_W_m2_nm").samples().stream()
                .map(sample -> sample.wavelengthNanometres() + "," + sample.wattsPerSquareMetrePerNanometre())
                .collect(Collectors.joining("\n", "nm,W/(m2 nm)\n", "\n"));
    }

    private ResultActions upload(String text) throws Exception {
        MockMultipartFile file =
                new MockMultipartFile("file", "lamp.csv", "text/csv", text.getBytes(StandardCharsets.UTF_8));
        return pages.perform(multipart(page + "/spectrum")
                .file(file)
                .param("version", "0")
                .param("source", "maker, at 0.3 m")
                .param("content", "")
                .with(csrf())
                .with(collection.as(lead)));
    }
}
