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
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

/** From a sheet that was made for nobody's program, at a site with nothing on record, to a review. */
@BrowserTest
class ImportIT {
    private static final String PASSWORD = "four plain words here";

    private static final Duration LONGEST = Duration.ofMinutes(1);
    private static final int WEEKS = 104;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("dd.MM.yyyy", Locale.ROOT);

    /** Invented: a title, semicolons, decimal commas, names of columns that no empty sheet of ours has, one lux column. */
    private static final String HEAD = """
            Wochenmessung Haus Süd;;;;;;;;;

            Gehege;Tier;Wissenschaftlicher Name;Im Gehege seit;Messdatum;Uhrzeit;UVI am Sonnenplatz;UVI Schatten;Helligkeit Sonnenplatz (klx);Tierpfleger
            """;

    @Autowired
    private Browser browser;

    @Autowired
    private Sites sites;

    @Autowired
    private People people;

    @Autowired
    private JdbcTemplate database;

    @TempDir
    private Path folder;

    /**
     * Targets come last, as they do at a start. Bearded dragons are of UV zone 3 in the library, with 2.9 to 7.4 and a ceiling
     * of 8; the devil of zone 4, from 4.5 on.
     */
    @Test
    void aSheetOfAnotherLanguageBecomesAFullReview() throws IOException {
        SiteFacts site = sites.add("Station Nord", ZoneId.of("Europe/Berlin"));
        NewPerson lead = new NewPerson("nord.lead", "Maja Lind", PASSWORD);
        people.add(site.id(), lead, EnumSet.of(Role.SUPERVISOR), Optional.empty());
        Path sheet = Files.write(folder.resolve("wochen.csv"), twoYears().getBytes(Charset.forName("windows-1252")));
        browser.at(1280, 900)
                .signIn("nord.lead", PASSWORD)
                .open("/records/import")
                .attach("file", sheet)
                .press("Look what is in it")
                .await("What the columns of")
                .press("Try it: store nothing yet")
                .await("What would be stored")
                .press("Import: store all of it")
                .await("936 readings were added")
                .open("/targets/confirmation")
                .press(By.xpath("(//input[@name='species'])[1]"))
                .press(By.xpath("(//input[@name='species'])[2]"))
                .type("reason", "agreed with the team")
                .press("Confirm those that are ticked")
                .await(By.xpath("//td[contains(., 'earlier readings too')]"))
                .open("/review");
        assertThat(browser.texts(".tally .state")).containsExactly("1 over the ceiling", "1 too weak", "1 on target");
        assertThat(browser.texts("article.finding"))
                .satisfiesExactly(
                        first -> assertThat(first).contains("Felsgehege Süd", "9.3", "over by 1.3"),
                        second -> assertThat(second).contains("Teufelgehege", "2.0"));
        browser.awaitThat(() -> "a reading has no target", LONGEST, () -> standing(site, "NO_TARGET") == 0);
        assertThat(standing(site, "OVER_CEILING")).isEqualTo(2);
        assertThat(alarms(site)).isEqualTo(1);
    }

    /** One enclosure was over the ceiling a year ago and is again, one is too weak, one on target. */
    private static String twoYears() {
        LocalDate last = LocalDate.now(ZoneId.of("Europe/Berlin")).minusDays(1);
        return IntStream.range(0, WEEKS)
                .mapToObj(week -> {
                    String day = DAY.format(last.minusWeeks(week));
                    String since = DAY.format(last.minusWeeks(WEEKS));
                    String strong = week == 0 || week == 52 ? "9,3" : "3,4";
                    return """
                            Felsgehege Süd;Juli;Pogona vitticeps;%2$s;%1$s;14:30;%3$s;0,1;42,5;J. Möller
                            Sandgehege;August;Pogona vitticeps;%2$s;%1$s;14:50;4,6;0,1;41,0;J. Möller
                            Teufelgehege;Dorn;Moloch horridus;%2$s;%1$s;15:10;2,0;0,0;18,2;J. Möller
                            """.formatted(day, since, strong);
                })
                .collect(Collectors.joining("", HEAD, ""));
    }

    private int standing(SiteFacts site, String state) {
        return count(
                "select count(*) from verdict where replaced_at is null and site_id = ? and state = ?",
                site.id(),
                state);
    }

    private int alarms(SiteFacts site) {
        return count("select count(*) from alarm where site_id = ?", site.id());
    }

    private int count(String question, Object... of) {
        return Objects.requireNonNull(database.queryForObject(question, Integer.class, of));
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
