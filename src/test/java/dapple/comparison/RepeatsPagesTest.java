package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.testing.Asking;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** What a second person is asked to read again, and what is told of it and when. */
@PagesTest
class RepeatsPagesTest {
    private static final Pattern LINK =
            Pattern.compile("href=\"(/enclosures/\\d+/visits/[-0-9a-f]+/points/\\d+\\?quantity=UV_INDEX)\"");

    /** No other number on any page is written so. */
    private static final String FIRST = "23.7";

    @Autowired
    private TestCollection collection;

    @Autowired
    private Sites sites;

    @Autowired
    private JdbcClient database;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private Drawn drawn;
    private SignedIn keeper;
    private SignedIn other;
    private MeterFacts meter;
    private Home home;

    @BeforeEach
    void furnish() throws Exception {
        site = collection.site();
        drawn = Drawn.at(site, sites, database);
        keeper = Drawn.asked(collection.person(site, Role.KEEPER));
        other = Drawn.asked(collection.person(site, Role.KEEPER));
        meter = collection.meter(site);
        home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
        read(
                keeper,
                "/enclosures/" + home.enclosureId() + "/visits/" + UUID.randomUUID() + "/points/"
                        + home.basking().id(),
                drawn.key(),
                FIRST);
    }

    @Test
    void itWaitsForTheOthersWithALinkToReadItThere() throws Exception {
        assertThat(LINK.matcher(page(other)).find()).isTrue();
    }

    @Test
    void todaySaysThatItWaits() throws Exception {
        asking(other).see("/").andExpect(content().string(containsString("one reading waits for a second person")));
    }

    @Test
    void whoReadFirstIsNotAsked() throws Exception {
        asking(keeper)
                .see("/repeats")
                .andExpect(content()
                        .string(allOf(containsString("Nothing waits for you"), not(containsString("?quantity=")))));
    }

    @Test
    void theFirstAmountIsNotOnThePageThatAsks() throws Exception {
        assertThat(page(other)).doesNotContain(FIRST);
    }

    /** The page where it is read, that page with a mistyped number, and the answer to one's own number. */
    @Test
    void theFirstAmountIsNowhereOnTheWayToTheSecond() throws Exception {
        String link = link();
        Asking second = asking(other);
        second.see(link).andExpect(status().isOk()).andExpect(content().string(not(containsString(FIRST))));
        second.send(link, entry(drawn.otherKey(), "much"))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString(FIRST))));
        second.see(read(other, link, drawn.otherKey(), "24.9"))
                .andExpect(content().string(allOf(containsString("24.9"), not(containsString(FIRST)))));
    }

    @Test
    void whenItIsStoredTheRatioIsTold() throws Exception {
        read(other, link(), drawn.otherKey(), "24.9");
        assertThat(page(other)).contains("1.05", "within 15 % or one step", "1 of 1");
    }

    @Test
    void whatIsFartherApartIsSaid() throws Exception {
        read(other, link(), drawn.otherKey(), "35.1");
        assertThat(page(other)).contains("<strong>beyond 15 %</strong>", "0 of 1");
    }

    @Test
    void noNamesStandBesideTheNumbers() throws Exception {
        read(other, link(), drawn.otherKey(), "24.9");
        SignedIn third = Drawn.asked(collection.person(site, Role.KEEPER));
        assertThat(page(third)).doesNotContain(keeper.fullName(), other.fullName());
    }

    @Test
    void aSupervisorIsToldWhoReadWhat() throws Exception {
        read(other, link(), drawn.otherKey(), "24.9");
        assertThat(page(Drawn.asked(collection.person(site, Role.SUPERVISOR))))
                .contains(keeper.fullName(), other.fullName());
    }

    @Test
    void theFileTellsWhoReadWhatOnlyToWhoIsToldOnThePage() throws Exception {
        read(other, link(), drawn.otherKey(), "24.9");
        assertThat(file(other).rows())
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("Second over first", "1.05063")
                        .containsEntry("Agree, by one meter", "yes")
                        .doesNotContainKeys("First read by", "First, as the meter showed it"));
        assertThat(file(Drawn.asked(collection.person(site, Role.SUPERVISOR))).rows())
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("First read by", keeper.fullName())
                        .containsEntry("First, as the meter showed it", FIRST)
                        .containsEntry("Read again by", other.fullName())
                        .containsEntry("Second, as the meter showed it", "24.9"));
    }

    @Test
    void theFileTellsNothingOfWhatStillWaits() throws Exception {
        assertThat(file(Drawn.asked(collection.person(site, Role.SUPERVISOR))).rows())
                .isEmpty();
    }

    @Test
    void aSupervisorIsToldNothingOfWhatStillWaits() throws Exception {
        assertThat(page(Drawn.asked(collection.person(site, Role.SUPERVISOR)))).doesNotContain(FIRST);
    }

    @Test
    void whoLogsNoReadingsHasNoSuchPage() throws Exception {
        asking(Drawn.asked(collection.person(site, Role.INSPECTOR)))
                .see("/repeats")
                .andExpect(status().isForbidden());
    }

    @Test
    void whereASiteDoesNotAskThereIsNothing() throws Exception {
        SignedIn elsewhere = collection.person(collection.site(), Role.KEEPER);
        asking(elsewhere).see("/repeats").andExpect(status().isNotFound());
        asking(elsewhere).see("/repeats.csv").andExpect(status().isNotFound());
    }

    @Test
    void anotherSiteSeesNothingOfIt() throws Exception {
        SiteFacts elsewhere = collection.site();
        Drawn.at(elsewhere, sites, database);
        assertThat(page(collection.person(elsewhere, Role.SUPERVISOR))).contains("Nothing waits for you");
    }

    private String link() throws Exception {
        Matcher found = LINK.matcher(page(other));
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    private CsvTable file(SignedIn person) throws Exception {
        return CsvTable.of(asking(person)
                .see("/repeats.csv")
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray());
    }

    private String page(SignedIn person) throws Exception {
        return asking(person)
                .see("/repeats")
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private String read(SignedIn person, String path, UUID key, String amount) throws Exception {
        String answer = asking(person)
                .send(path, entry(key, amount))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Optional.ofNullable(answer).orElseThrow();
    }

    private Map<String, String> entry(UUID key, String amount) {
        return Map.of("key", key.toString(), "meterId", String.valueOf(meter.id()), "amount", amount);
    }

    private Asking asking(SignedIn person) {
        return new Asking(pages, collection.as(person));
    }
}
