package dapple.meter;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Factors by range, and certificates as files. */
@PagesTest
class CertificatesPagesTest {
    private static final Map<String, String> BY_RANGE = Map.of(
            "calibratedOn", "2026-03-01",
            "correction", "RANGES",
            "ranges.from", "0",
            "ranges.upTo[0]", "2",
            "ranges.by[0]", "1,05",
            "ranges.upTo[1]", "10",
            "ranges.by[1]", "1.08",
            "dueOn", "2027-03-01",
            "certificate", "C-0816");

    @Autowired
    private TestCollection collection;

    @Autowired
    private Meters meters;

    @Autowired
    private MockMvc pages;

    private SignedIn lead;
    private Asking asking;
    private String page;
    private String file;

    @BeforeEach
    void furnish() {
        SiteFacts site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        asking = new Asking(pages, collection.as(lead));
        MeterFacts meter = collection.meter(site);
        page = "/meters/" + meter.id();
        NewCalibration entered =
                new NewCalibration(Instant.parse("2026-01-01T00:00:00Z"), 1, LocalDate.of(2027, 1, 1), "C-1");
        file = page + "/calibrations/"
                + meters.calibrate(site.id(), meter.id(), entered, lead.personId())
                        .id()
                + "/file";
    }

    @Test
    void factorsByRangeAreListed() throws Exception {
        asking.send(page + "/calibrations/new", BY_RANGE).andExpect(redirectedUrl(page));
        asking.see(page)
                .andExpect(content()
                        .string(allOf(containsString("0 to 2 UVI: × 1.05"), containsString("2 to 10 UVI: × 1.08"))));
    }

    @ParameterizedTest
    @CsvSource({
        "ranges.from, ''",
        "ranges.from, low",
        "ranges.from, 1e400",
        "ranges.upTo[0], NaN",
        "ranges.upTo[0], 0",
        "ranges.upTo[0], -1",
        "ranges.upTo[1], 2",
        "ranges.upTo[1], ''",
        "ranges.by[0], ''",
        "ranges.by[0], much",
        "ranges.by[0], 0",
        "ranges.by[1], 10",
        "ranges.by[1], 1.00001"
    })
    void aWrongRangeComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(page + "/calibrations/new", BY_RANGE, field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"" + typed + "\"")));
    }

    @Test
    void rangesBesideOneFactorAreAskedAbout() throws Exception {
        Map<String, String> form = new HashMap<>(BY_RANGE);
        form.put("correction", "FACTOR");
        form.put("factor", "1.04");
        asking.send(page + "/calibrations/new", form)
                .andExpect(
                        content().string(containsString("Leave the ranges empty, or choose a factor for each range")));
    }

    @Test
    void rangesWithoutAnyAreAskedFor() throws Exception {
        Map<String, String> form = new HashMap<>(BY_RANGE);
        form.keySet().removeIf(field -> field.contains("["));
        asking.send(page + "/calibrations/new", form)
                .andExpect(content().string(containsString("Enter where the first range ends, for example 2")));
    }

    @Test
    void aCertificateIsHandedOutAsItWasFiled() throws Exception {
        byte[] certificate = pdf(2_500_000);
        file("..\\folder/Zertifikat ä.pdf", certificate).andExpect(redirectedUrl(page));
        asking.see(page).andExpect(content().string(containsString("Save PDF, 2500 kB")));
        asking.see(file)
                .andExpect(content().bytes(certificate))
                .andExpect(header().string("Content-Type", "application/pdf"))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Cross-Origin-Resource-Policy", "same-site"))
                .andExpect(header().string(
                                "Content-Disposition",
                                allOf(containsString("attachment"), not(containsString("folder")))));
    }

    /** The first bytes are the file's kind, not its name. */
    @Test
    void aFileIsWhatItsFirstBytesSay() throws Exception {
        file("certificate.pdf", "<html><script>".getBytes(StandardCharsets.UTF_8))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Choose a PDF, PNG or JPEG")));
    }

    @Test
    void noFileIsAskedFor() throws Exception {
        file("", new byte[0]).andExpect(content().string(containsString("id=\"file-wrong\"")));
    }

    @Test
    void aFileOfMoreThanFiveMegabytesIsRefused() throws Exception {
        file("large.pdf", pdf(5_000_001)).andExpect(content().string(containsString("Choose a file of at most 5 MB.")));
    }

    @Test
    void aFileSentTwiceIsKeptOnce() throws Exception {
        file("first.pdf", pdf(100)).andExpect(redirectedUrl(page));
        file("second.pdf", pdf(200)).andExpect(content().string(containsString("has its certificate already")));
    }

    @Test
    void whatWasNotFiledIsNotFound() throws Exception {
        asking.see(file).andExpect(status().isNotFound());
    }

    private ResultActions file(String name, byte[] content) throws Exception {
        return pages.perform(multipart(file + "/new")
                .file(new MockMultipartFile("file", name, "application/pdf", content))
                .with(csrf())
                .with(collection.as(lead)));
    }

    private static byte[] pdf(int size) {
        byte[] content = new byte[size];
        new Random(1).nextBytes(content);
        byte[] begin = "%PDF-1.7".getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(begin, 0, content, 0, begin.length);
        return Arrays.copyOf(content, size);
    }
}
