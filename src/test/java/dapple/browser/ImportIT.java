package dapple.browser;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.people.NewPerson;
import dapple.people.People;
import dapple.people.Role;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;

/** From a sheet that was made for nobody's program, at a site with nothing on record, to a review. */
@BrowserTest
class ImportIT {
    private static final String PASSWORD = "four plain words here";

    /** Invented: a title, semicolons, decimal commas, names of columns that no empty sheet of ours has, one lux column. */
    private static final String SHEET = """
            Wochenmessung Haus Süd;;;;;;;

            Gehege;Wissenschaftlicher Name;Messdatum;Uhrzeit;UVI am Sonnenplatz;UVI Schatten;Helligkeit Sonnenplatz (klx);Tierpfleger
            Felsgehege Süd;Pogona vitticeps;13.11.2025;14:30;3,4;0,1;42,5;J. Möller
            Palmenbecken;Intellagama lesueurii;13.11.2025;14:50;2,9;0,0;18,2;J. Möller
            Felsgehege Süd;Pogona vitticeps;20.11.2025;14:10;3,1;0,1;41,0;J. Möller
            """;

    @Autowired
    private Browser browser;

    @Autowired
    private Sites sites;

    @Autowired
    private People people;

    @TempDir
    private Path folder;

    @Test
    void aSheetOfAnotherLanguageBecomesAReview() throws IOException {
        SiteFacts site = sites.add("Station Nord", ZoneId.of("Europe/Berlin"));
        NewPerson lead = new NewPerson("nord.lead", "Maja Lind", PASSWORD);
        people.add(site.id(), lead, EnumSet.of(Role.SUPERVISOR), Optional.empty());
        Path sheet = Files.write(folder.resolve("wochen.csv"), SHEET.getBytes(Charset.forName("windows-1252")));
        browser.at(1280, 900)
                .signIn("nord.lead", PASSWORD)
                .open("/records/import")
                .attach("file", sheet)
                .press("Look what is in it")
                .await("What the columns of")
                .press("Try it: store nothing yet")
                .await("What would be stored")
                .press("Import: store all of it")
                .await("9 readings were added")
                .open("/review");
        assertThat(browser.text()).contains("Felsgehege Süd", "Palmenbecken");
    }

    @ParameterizedTest
    @CsvSource({"390, 844, day", "1280, 800, night"})
    void itsPagesKeepTheRulesForEveryPage(int width, int height, String scheme) throws IOException {
        String bad = "Enclosure,Species,Date,Basking UVI\nE1,Pogona viticeps,2025-11-13,much\n";
        Path sheet = Files.writeString(folder.resolve("bad.csv"), bad);
        browser.at(width, height)
                .scheme(scheme)
                .signInAs("supervisor")
                .open("/records/import")
                .attach("file", sheet)
                .press("Look what is in it")
                .await("What the columns of");
        assertThat(PageRules.brokenBy(browser)).as("columns").isEmpty();
        browser.press("Try it: store nothing yet").await("What would be stored");
        assertThat(PageRules.brokenBy(browser)).as("try").isEmpty();
        browser.press("Give it up").scheme("day");
    }
}
