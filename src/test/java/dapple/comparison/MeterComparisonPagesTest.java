package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** Comparisons of meters, from the day on which they are due to what they say. */
@PagesTest
class MeterComparisonPagesTest {
    private static final String ALL = "/meters/comparisons";
    private static final String FRESH = ALL + "/new";

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;
    private Asking asking;
    private MeterFacts first;
    private MeterFacts second;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        asking = new Asking(pages, collection.as(supervisor));
        first = collection.meter(site);
        second = collection.meter(site);
        home = collection.home(site, supervisor, collection.species(site, "Pogona vitticeps"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", ALL})
    void twoMetersThatWereNeverComparedAreDue(String page) throws Exception {
        asking.see(page).andExpect(content().string(containsString("never done")));
    }

    @Test
    void aKeeperIsNotAskedToBeginOne() throws Exception {
        new Asking(pages, collection.as(collection.person(site, Role.KEEPER)))
                .see("/")
                .andExpect(content().string(not(containsString("Compare meters"))));
    }

    @Test
    void metersAtHandAndPointsAreProposed() throws Exception {
        asking.see(FRESH + "?quantity=UV_INDEX")
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                checked("meters", first.id()),
                                checked("meters", second.id()),
                                checked("points", home.basking().id()))));
    }

    @Test
    void thermometersAreNotComparedByRatio() throws Exception {
        asking.see(FRESH + "?quantity=AIR_TEMPERATURE").andExpect(status().isNotFound());
    }

    @ParameterizedTest
    @CsvSource({
        "meters, ''",
        "meters, all",
        "meters, 1e400",
        "meters, 0",
        "meters, -4",
        "points, ''",
        "points, P1",
        "points, NaN",
        "points, 0"
    })
    void aWrongChoiceComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(FRESH, form(), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")));
    }

    @Test
    void aMeterOfAnotherSiteCannotBeChosen() throws Exception {
        long foreign = collection.meter(collection.site()).id();
        asking.send(FRESH, form(), "meters", first.id() + "," + foreign)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"meters-wrong\"")));
    }

    @Test
    void whatIsSentTwiceBeginsOnce() throws Exception {
        Map<String, String> form = form();
        assertThat(begin(form)).isEqualTo(begin(form));
    }

    @Test
    void aSecondOneIsRefusedInWords() throws Exception {
        begin();
        asking.send(FRESH, form())
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Somebody else has begun a comparison")));
    }

    @Test
    void itSaysWhatHasBeenReadAndWhatNot() throws Exception {
        String page = begin();
        read(home.basking(), first, 3.0);
        asking.see(page)
                .andExpect(content()
                        .string(allOf(
                                containsString("0 of 3 points count"),
                                containsString("not read"),
                                containsString("/points/" + home.basking().id() + "?quantity=UV_INDEX"))));
    }

    @Test
    void noRatioAndNoAmountIsShownBeforeItsEnd() throws Exception {
        String page = begin();
        read(home.basking(), first, 3.719);
        read(home.basking(), second, 3.719);
        asking.see(page)
                .andExpect(content()
                        .string(allOf(
                                containsString("1 of 3 points count"),
                                not(containsString("3.7")),
                                not(containsString("What it says")))));
    }

    @Test
    void itEndsByItsLastReadingAndSaysThatTheyAgree() throws Exception {
        String page = begin();
        readAll(3.3, 3.0);
        asking.see(page)
                .andExpect(content()
                        .string(allOf(
                                containsString("<strong>complete,"),
                                containsString(first.code() + " shows 10.0 % more"),
                                containsString("They agree within what is stated of them."))));
    }

    @Test
    void thatTheyDifferIsSaidWithWhatToDoNext() throws Exception {
        String page = begin();
        readAll(3.0, 6.0);
        asking.see(page)
                .andExpect(content()
                        .string(allOf(
                                containsString("They differ by more than is stated of them."),
                                containsString("check both under the reference lamp"),
                                containsString("/meters/" + second.id() + "/practice"))));
    }

    @Test
    void somebodyEndsItWithAReason() throws Exception {
        String page = begin();
        asking.send(page + "/end", Map.of("reason", "M2 is broken"));
        asking.see(page).andExpect(content().string(containsString("before it was complete: M2 is broken")));
    }

    @Test
    void nobodyEndsItWithoutAReason() throws Exception {
        asking.send(begin() + "/end", Map.of("reason", ""))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"reason-wrong\"")));
    }

    @Test
    void itEndsOnce() throws Exception {
        String page = begin();
        asking.send(page + "/end", Map.of("reason", "M2 is broken"));
        asking.send(page + "/end", Map.of("reason", "no time"))
                .andExpect(status().isConflict())
                .andExpect(content()
                        .string(allOf(containsString("It had ended already"), containsString("M2 is broken"))));
    }

    @ParameterizedTest
    @CsvSource({"KEEPER, 200, 403", "VET, 200, 403", "INSPECTOR, 200, 403", "LIGHTING_LEAD, 200, 200"})
    void whoMaySeeAndWhoMayBegin(Role role, int seen, int begun) throws Exception {
        Asking one = new Asking(pages, collection.as(collection.person(site, role)));
        one.see(ALL).andExpect(status().is(seen));
        one.see(FRESH + "?quantity=UV_INDEX").andExpect(status().is(begun));
    }

    @Test
    void oneOfAnotherSiteIsNotFound() throws Exception {
        String page = begin();
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        Asking elsewhere = new Asking(pages, collection.as(stranger));
        elsewhere.see(page).andExpect(status().isNotFound());
        elsewhere.send(page + "/end", Map.of("reason", "not ours")).andExpect(status().isNotFound());
    }

    private static Matcher<String> checked(String field, long id) {
        return matchesPattern("(?s).*<input type=\"checkbox\" value=\"" + id + "\" id=\"" + field + "\\d+\" name=\""
                + field + "\" checked=\"checked\".*");
    }

    @Test
    void whenEachMeterReadEachPointComesAsAFile() throws Exception {
        String address = begin();
        read(home.basking(), first, 3.1);
        asking.see(address).andExpect(content().string(containsString("href=\"" + address + ".csv\"")));
        CsvTable table = CsvTable.of(
                asking.see(address + ".csv").andReturn().getResponse().getContentAsByteArray());
        assertThat(table.rows()).hasSize(6);
        assertThat(table.rows().get(0))
                .containsEntry("Point", home.basking().code())
                .containsEntry("Meter", first.code())
                .containsEntry("Counts", "no");
        assertThat(table.column("Taken at")).filteredOn(at -> !at.isEmpty()).hasSize(1);
    }

    private String begin() throws Exception {
        return begin(form());
    }

    private String begin(Map<String, String> form) throws Exception {
        String address = asking.send(FRESH, form)
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Optional.ofNullable(address).orElseThrow();
    }

    private Map<String, String> form() {
        return Map.of(
                "key",
                UUID.randomUUID().toString(),
                "quantity",
                "UV_INDEX",
                "meters",
                first.id() + "," + second.id(),
                "points",
                home.basking().id() + "," + home.gradient().id() + ","
                        + home.shade().id());
    }

    private void readAll(double byFirst, double bySecond) {
        List.of(home.basking(), home.gradient(), home.shade()).forEach(point -> {
            read(point, first, byFirst);
            read(point, second, bySecond);
        });
    }

    private void read(PointFacts point, MeterFacts meter, double amount) {
        VisitPlace place = new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id());
        logging.log(Visitor.of(supervisor), new Entry(UUID.randomUUID(), place, meter.id(), amount, clock.instant()));
    }
}
