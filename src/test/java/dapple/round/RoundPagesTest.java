package dapple.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.stringContainsInOrder;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.Enclosures;
import dapple.light.judging.PointRole;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.CsvTable;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class RoundPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RoundArranging arranging;

    @Autowired
    private WalkKeeping keeping;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn supervisor;
    private SignedIn keeper;
    private long first;
    private long second;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        keeper = collection.person(site, Role.KEEPER);
        first = door();
        second = door();
    }

    private long door() {
        long enclosure = collection.emptyEnclosure(site);
        collection.point(site, enclosure, "P1", PointRole.BASKING);
        return enclosure;
    }

    @Test
    void aRoundIsWalkedInTheOrderThatTheFormNames() throws Exception {
        String round = added(typed().param("place-" + second, "1"));
        see(supervisor, round + "/walks/" + today(), stringContainsInOrder(code(second), code(first)));
    }

    @Test
    void theStopsOfAWalkComeAsAFile() throws Exception {
        String walk = added(typed().param("place-" + second, "1")) + "/walks/" + today();
        see(supervisor, walk, containsString("href=\"" + walk + ".csv\""));
        CsvTable table = CsvTable.of(pages.perform(get(walk + ".csv").with(collection.as(keeper)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray());
        assertThat(table.column("Enclosure")).containsExactly(code(second), code(first));
        assertThat(table.rows().get(0))
                .containsEntry("Due on", today().toString())
                .containsEntry("Point", "P1")
                .containsEntry("Quantity", "UV index")
                .containsEntry("Done", "no");
    }

    @Test
    void withoutPlacesARoundIsWalkedByRoomAndDoor() throws Exception {
        String round = added(typed());
        see(supervisor, round + "/walks/" + today(), stringContainsInOrder(code(first), code(second)));
    }

    @ParameterizedTest
    @CsvSource({
        "everyDays, often, Enter a whole number",
        "everyDays, 0, from 1 to 366",
        "everyDays, 367, from 1 to 366",
        "everyDays, 1e400, Enter a whole number",
        "everyDays, NaN, Enter a whole number",
        "everyDays, '', from 1 to 366",
        "firstDay, soon, Enter a day",
        "firstDay, 1200-01-01, 1950 to 2199",
        "lastDay, 1999-01-01, not before the first day",
        "title, '', Enter something here",
        "givenTo, 999999, who logs readings at this site",
        "givenTo, VET, who logs readings at this site"
    })
    void whatIsWrongIsSaidAndWhatWasTypedIsKept(String field, String typed, String said) throws Exception {
        MockHttpServletRequestBuilder form = typed(field).param(field, typed).param("place-" + first, "7");
        send(supervisor, form)
                .andExpect(status().isOk())
                .andExpect(content().string(allOf(containsString(said), containsString("value=\"7\""))));
    }

    @Test
    void aPlaceThatIsNoNumberIsSaidBesideTheDoor() throws Exception {
        send(supervisor, typed().param("place-" + first, "first"))
                .andExpect(content()
                        .string(allOf(containsString("place-" + first + "-wrong"), containsString("value=\"first\""))));
    }

    @Test
    void aRoundWithoutDoorsIsNone() throws Exception {
        send(supervisor, typed("walked")).andExpect(content().string(containsString("Tick one enclosure at least")));
    }

    @Test
    void aRoundWithoutDaysIsNone() throws Exception {
        send(supervisor, typed("cadence").param("cadence", "WEEKDAYS"))
                .andExpect(content().string(containsString("Choose one day of the week at least")));
    }

    @Test
    void anotherSitesDoorIsNotFound() throws Exception {
        long foreign = collection.emptyEnclosure(collection.site());
        send(supervisor, typed().param("walked", String.valueOf(foreign))).andExpect(status().isNotFound());
    }

    @Test
    void aFormThatIsSentTwicePlansOneRound() throws Exception {
        added(typed());
        send(supervisor, typed()).andExpect(content().string(containsString("has a round of this title")));
    }

    @Test
    void aStaleFormComesBackWithBothStates() throws Exception {
        long plan = plan("Round", today());
        MockHttpServletRequestBuilder mine =
                fields(post("/rounds/" + plan + "/edit"), "title").param("title", "Mine");
        MockHttpServletRequestBuilder theirs =
                fields(post("/rounds/" + plan + "/edit"), "title").param("title", "Theirs");
        send(supervisor, theirs).andExpect(redirectedUrl("/rounds/" + plan));
        send(supervisor, mine)
                .andExpect(status().isConflict())
                .andExpect(
                        content().string(allOf(containsString("value=\"Mine\""), containsString("<dd>Theirs</dd>"))));
    }

    @Test
    void historyTellsOfDoorsAndWalks() throws Exception {
        long plan = plan("Round", today());
        keeping.begin(keeper, plan, today());
        see(
                supervisor,
                "/rounds/" + plan + "/history",
                allOf(containsString("Door"), containsString(code(first)), containsString("Begun by")));
    }

    @Test
    void toBeginLeadsToTheFirstDoor() throws Exception {
        long plan = plan("Round", today());
        send(keeper, post(walk(plan) + "/begin")).andExpect(redirectedUrl(walk(plan) + "/on-phone"));
        see(keeper, walk(plan), allOf(containsString("under way"), containsString("Go on at " + code(first))));
    }

    @Test
    void aWalkIsGivenToSomebodyElseInOneStep() throws Exception {
        long plan = plan("Round", today());
        SignedIn other = collection.person(site, Role.KEEPER);
        send(keeper, give(plan, 0, String.valueOf(other.personId()))).andExpect(redirectedUrl(walk(plan)));
        see(keeper, walk(plan), stringContainsInOrder(other.fullName(), "this walk only"));
    }

    @Test
    void whoGivesFromAStalePageIsAsked() throws Exception {
        long plan = plan("Round", today());
        send(keeper, give(plan, 0, String.valueOf(keeper.personId())));
        send(supervisor, give(plan, 0, "SUPERVISOR"))
                .andExpect(status().isConflict())
                .andExpect(content()
                        .string(allOf(
                                containsString("Changed meanwhile"),
                                containsString(keeper.fullName()),
                                containsString("value=\"SUPERVISOR\" selected"))));
    }

    @Test
    void aWalkIsGivenToNobodyOfAnotherSite() throws Exception {
        long plan = plan("Round", today());
        long stranger = collection.person(collection.site(), Role.KEEPER).personId();
        send(keeper, give(plan, 0, String.valueOf(stranger)))
                .andExpect(content().string(containsString("who logs readings at this site")));
    }

    @Test
    void anotherReasonWantsWords() throws Exception {
        long plan = plan("Round", today());
        send(keeper, excuse(plan, "OTHER", " ")).andExpect(content().string(containsString("Say the reason in words")));
        send(keeper, excuse(plan, "", "")).andExpect(content().string(containsString("Choose a reason")));
    }

    @Test
    void whatWasNotWalkedForAReasonSaysSo() throws Exception {
        long plan = plan("Round", today().minusDays(1));
        String walk = "/rounds/" + plan + "/walks/" + today().minusDays(1);
        send(keeper, post(walk + "/excuse").param("version", "0").param("reason", "NO_METER"))
                .andExpect(redirectedUrl(walk));
        see(keeper, walk, containsString("Not walked: no meter."));
        see(keeper, "/", not(containsString("Round: overdue")));
        see(supervisor, "/review", not(containsString("round overdue</strong>")));
    }

    @Test
    void todayShowsOnesOwnRoundsFirst() throws Exception {
        plan("Of the supervisors", today(), new GivenTo.Holders(Role.SUPERVISOR));
        plan("Of the keepers", today(), new GivenTo.Holders(Role.KEEPER));
        see(keeper, "/", stringContainsInOrder("Of the keepers", "Given to others", "Of the supervisors"));
        see(supervisor, "/", stringContainsInOrder("Of the supervisors", "Given to others", "Of the keepers"));
    }

    @Test
    void todayMarksWhatIsOverdue() throws Exception {
        plan("Round", today().minusDays(1));
        see(
                keeper,
                "/",
                matchesPattern("(?s).*Round: overdue.*#round-overdue.*|(?s).*#round-overdue.*Round: overdue.*"));
    }

    @Test
    void reviewShowsWhatIsOverdueAsAKindOfItsOwn() throws Exception {
        plan("Round", today().minusDays(1));
        long room = enclosures.get(site.id(), first).roomId();
        long elsewhere = enclosures.get(site.id(), door()).roomId();
        Matcher<String> shown = containsString("round overdue</strong>");
        see(supervisor, "/review", allOf(shown, containsString("One round is overdue")));
        see(supervisor, "/review?kind=ROUND_OVERDUE&room=" + room, shown);
        see(supervisor, "/review?room=" + elsewhere, not(shown));
        see(supervisor, "/review?kind=OVERDUE", not(shown));
        see(supervisor, "/review?species=1", not(shown));
    }

    @Test
    void whoReadsNothingSeesRoundsWithoutForms() throws Exception {
        long plan = plan("Round", today());
        see(
                collection.person(site, Role.VET),
                walk(plan),
                allOf(containsString("due today"), not(containsString("<form class=\"panel\""))));
    }

    @Test
    void whoSeesAllRoundsSeesTheirCadence() throws Exception {
        plan("Round", today());
        see(keeper, "/rounds", allOf(containsString("every 7 days"), containsString("0 of 2 done")));
    }

    private MockHttpServletRequestBuilder give(long plan, long version, String to) {
        return post(walk(plan) + "/given")
                .param("version", String.valueOf(version))
                .param("to", to);
    }

    private MockHttpServletRequestBuilder excuse(long plan, String reason, String text) {
        return post(walk(plan) + "/excuse")
                .param("version", "0")
                .param("reason", reason)
                .param("text", text);
    }

    /** A form for a round that is due today, without one of its fields. */
    private MockHttpServletRequestBuilder typed(String... without) {
        return fields(post("/rounds/new"), without);
    }

    private MockHttpServletRequestBuilder fields(MockHttpServletRequestBuilder form, String... without) {
        List<String> missing = List.of(without);
        List<String[]> fields = List.of(
                new String[] {"version", "0"},
                new String[] {"title", "Both doors"},
                new String[] {"cadence", "EVERY"},
                new String[] {"everyDays", "7"},
                new String[] {"firstDay", today().toString()},
                new String[] {"givenTo", "KEEPER"},
                new String[] {"walked", String.valueOf(first)},
                new String[] {"walked", String.valueOf(second)});
        fields.stream().filter(field -> !missing.contains(field[0])).forEach(field -> form.param(field[0], field[1]));
        return form;
    }

    /** The path of a round that the form has planned. */
    private String added(MockHttpServletRequestBuilder form) throws Exception {
        String path = send(supervisor, form)
                .andExpect(redirectedUrlPattern("/rounds/*"))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Optional.ofNullable(path).orElseThrow();
    }

    private long plan(String title, LocalDate firstDay) {
        return plan(title, firstDay, new GivenTo.Holders(Role.KEEPER));
    }

    private long plan(String title, LocalDate firstDay, GivenTo givenTo) {
        DueDays days = new DueDays(new Cadence.Every(7), firstDay, Optional.empty());
        return arranging.add(site.id(), new PlanDetails(title, days, givenTo, List.of(first, second)));
    }

    private String walk(long plan) {
        return "/rounds/" + plan + "/walks/" + today();
    }

    private String code(long enclosure) {
        return enclosures.get(site.id(), enclosure).code();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), keeper.zone());
    }

    private ResultActions send(SignedIn who, MockHttpServletRequestBuilder form) throws Exception {
        return pages.perform(form.with(csrf()).with(collection.as(who)));
    }

    private void see(SignedIn who, String path, Matcher<String> what) throws Exception {
        pages.perform(get(path).with(collection.as(who)))
                .andExpect(status().isOk())
                .andExpect(content().string(what));
    }
}
