package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.archive.Stock.Kept;
import dapple.people.Role;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;

@PagesTest
class RecordsPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Stock stock;

    @Autowired
    private MockMvc pages;

    private Kept kept;
    private Asking inspector;

    @BeforeEach
    void furnish() throws Exception {
        kept = stock.make();
        inspector = new Asking(pages, collection.as(collection.person(kept.site(), Role.INSPECTOR)));
    }

    @Test
    void yearsAreOfferedFromTheFirstVisitOn() throws Exception {
        int now = LocalDate.now(kept.site().timeZone()).getYear();
        inspector
                .see("/records")
                .andExpect(content()
                        .string(allOf(
                                containsString("value=\"" + now + "\""),
                                containsString("value=\"" + (now - 2) + "\""),
                                not(containsString("value=\"" + (now - 3) + "\"")))));
    }

    @Test
    void anInspectorTakesAYearThatIsCompleteAndOfTheirSite(@TempDir Path folder) throws Exception {
        MockHttpServletResponse sent = inspector
                .see("/records/year?from=last-12-months")
                .andExpect(status().isOk())
                .andReturn()
                .getResponse();

        assertThat(sent.getHeader("Content-Disposition")).contains("last-12-months.zip");
        try (ArchiveFile archive =
                ArchiveFile.open(Files.write(folder.resolve("sent.zip"), sent.getContentAsByteArray()))) {
            archive.check();
            assertThat(archive.manifest().sites()).containsExactly(kept.site().name());
            assertThat(archive.manifest().kind()).isEqualTo(ArchiveKind.YEAR);
        }
    }

    @Test
    void ofAnythingElseThanAYearItSaysWhatToChoose() throws Exception {
        inspector.see("/records/year?from=soon").andExpect(redirectedUrl("/records?unknown"));
        inspector.see("/records?unknown").andExpect(content().string(containsString("Choose one of the years")));
    }

    @Test
    void backupsAreOfferedToAdministratorsAlone() throws Exception {
        inspector.see("/records").andExpect(content().string(not(containsString("/backups"))));
        new Asking(pages, collection.as(kept.keeper()))
                .see("/records")
                .andExpect(content().string(containsString("/backups")));
    }

    @Test
    void nothingIsRestoredOnceItHasBegun() throws Exception {
        inspector.see("/first-run/restore").andExpect(status().isNotFound());
    }

    /** What a photo or a certificate may have at most is far below; an empty installation alone takes more. */
    @Test
    void largeFilesAreNotEvenReadOnceItHasBegun() throws Exception {
        byte[] large = new byte[(17 << 20) + 1];
        pages.perform(MockMvcRequestBuilders.multipart("/first-run/restore")
                        .file(new MockMultipartFile("file", large))
                        .content(large)
                        .with(SecurityMockMvcRequestPostProcessors.csrf()))
                .andExpect(status().is(413));
    }
}
