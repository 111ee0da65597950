package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.Sites;
import dapple.testing.Asking;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@PagesTest
class BackupPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    @Autowired
    private BackupQueue queue;

    @Autowired
    private Backups backups;

    @Autowired
    private Sites sites;

    private SignedIn administrator;
    private Asking asking;

    @BeforeEach
    void signIn() {
        collection.site();
        administrator = collection.person(sites.first(), Role.ADMINISTRATOR);
        asking = new Asking(pages, collection.as(administrator));
    }

    @Test
    void aBackupThatWasAskedForIsListedWithWhoAskedAndChecked() throws Exception {
        asking.send("/backups", Map.of()).andExpect(redirectedUrl("/backups"));
        queue.settled().get();

        asking.see("/backups")
                .andExpect(content().string(containsString(administrator.fullName())))
                .andExpect(content().string(containsString("every sum compared")));
    }

    @Test
    void thePageSaysWhereTheFilesLieAndThatACopyBelongsElsewhere() throws Exception {
        asking.see("/backups")
                .andExpect(content().string(containsString(backups.folder().toString())))
                .andExpect(content().string(containsString("copy made to another machine")))
                .andExpect(content().string(containsString("hashes of their passwords")));
    }

    @Test
    void aBackupIsHandedOutAsItLies(@TempDir Path folder) throws Exception {
        BackupFile made = backups.make("a test");
        byte[] sent = asking.see("/backups/" + made.day())
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Disposition", containsString("dapple-" + made.day() + ".zip")))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();

        try (ArchiveFile archive = ArchiveFile.open(Files.write(folder.resolve("sent.zip"), sent))) {
            archive.check();
            assertThat(archive.manifest().kind()).isEqualTo(ArchiveKind.EVERYTHING);
        }
    }

    @Test
    void whoAdministersAnotherSiteIsToldWhoseTheBackupsAre() throws Exception {
        stranger()
                .see("/backups")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(sites.first().name())))
                .andExpect(content().string(containsString("year’s record of your own site")))
                .andExpect(content().string(not(containsString(backups.folder().toString()))));
    }

    @Test
    void whoAdministersAnotherSiteGetsNone() throws Exception {
        BackupFile made = backups.make("a test");
        stranger().see("/backups/" + made.day()).andExpect(status().isNotFound());
    }

    @Test
    void theyComeAsAFileWithWhoMadeThem() throws Exception {
        BackupFile made = backups.make("a test");
        asking.see("/backups").andExpect(content().string(containsString("href=\"/backups.csv\"")));
        assertThat(CsvTable.of(asking.see("/backups.csv")
                                .andExpect(status().isOk())
                                .andReturn()
                                .getResponse()
                                .getContentAsByteArray())
                        .rows())
                .anySatisfy(row -> assertThat(row)
                        .containsEntry("Day", made.day().toString())
                        .containsEntry("Made by", "a test")
                        .containsEntry("Size (bytes)", String.valueOf(made.bytes()))
                        .containsEntry("Can be read", "yes"));
    }

    @Test
    void whoAdministersAnotherSiteGetsNoFileOfThem() throws Exception {
        backups.make("a test");
        stranger().see("/backups.csv").andExpect(status().isNotFound());
    }

    @Test
    void whoAdministersAnotherSiteMakesNone() throws Exception {
        stranger().send("/backups", Map.of()).andExpect(redirectedUrl("/backups"));
        assertThat(queue.isWaiting()).isFalse();
    }

    private Asking stranger() {
        SignedIn other = collection.person(collection.site(), Role.ADMINISTRATOR);
        assertThat(other.siteId()).isNotEqualTo(sites.first().id());
        return new Asking(pages, collection.as(other));
    }

    @Test
    void aDayWithoutABackupIsNotFound() throws Exception {
        asking.see("/backups/1999-12-31").andExpect(status().isNotFound());
        asking.see("/backups/x..zip").andExpect(status().isNotFound());
    }

    @Test
    void aBackupThatCannotBeReadIsSaidToBe() throws Exception {
        backups.make("a test");
        Files.write(backups.folder().resolve(BackupFile.name(LocalDate.of(2026, 1, 1))), new byte[] {1, 2, 3});

        asking.see("/backups").andExpect(content().string(containsString("cannot be read: make another")));
    }

    @Test
    void nothingUnfinishedStays() throws Exception {
        backups.make("a test");
        try (Stream<Path> files = Files.list(backups.folder())) {
            assertThat(files).allMatch(file -> BackupFile.dayOf(file).isPresent());
        }
    }

    @Test
    void whatRetentionDoesNotKeepIsDeletedAfterwards() throws Exception {
        backups.make("a test");
        for (int day = 1; day <= 28; day++) {
            Files.write(backups.folder().resolve(BackupFile.name(LocalDate.of(2020, 2, day))), new byte[] {1});
        }
        backups.make("a test");

        assertThat(backups.file(LocalDate.of(2020, 2, 1))).isEmpty();
        assertThat(backups.file(LocalDate.of(2020, 2, 28))).isPresent();
    }
}
