package dapple.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.math.BigDecimal;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.json.JsonMapper;

@PagesTest
class EntriesPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private JsonMapper json;

    @Autowired
    private Clock clock;

    private final Map<String, Object> entry = new LinkedHashMap<>();
    private SiteFacts site;
    private SignedIn keeper;
    private Home home;
    private UUID key;

    @BeforeEach
    void typeAReading() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
        key = UUID.randomUUID();
        Instant now = now();
        entry.put("key", key);
        entry.put("visitKey", UUID.randomUUID());
        entry.put("personId", keeper.personId());
        entry.put("enclosureId", home.enclosureId());
        entry.put("pointId", home.basking().id());
        entry.put("quantity", "UV_INDEX");
        entry.put("meterId", collection.meter(site).id());
        entry.put("amount", 3.1);
        entry.put("takenAt", now.minusSeconds(600).toString());
        entry.put("sentAt", now.toString());
    }

    @Test
    void aReadingIsStoredAndJudged() throws Exception {
        send().andExpect(status().isOk())
                .andExpect(jsonPath("$.kind", is("STORED")))
                .andExpect(jsonPath("$.state", is("NO_TARGET")));
        assertThat(amounts()).containsExactly(3.1);
    }

    @Test
    void sentTwiceItIsStoredOnce() throws Exception {
        send();
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(amounts()).containsExactly(3.1);
    }

    @Test
    void itKeepsTheTimeAtWhichItWasTaken() throws Exception {
        send();
        assertThat(ago()).isBetween(Duration.ofSeconds(599), Duration.ofSeconds(660));
    }

    /** The phone is three hours fast: it still knows how long ago it was. */
    @Test
    void thePhonesClockMayBeWrong() throws Exception {
        Instant fast = now().plus(Duration.ofHours(3));
        entry.put("takenAt", fast.minusSeconds(600).toString());
        entry.put("sentAt", fast.toString());
        send();
        assertThat(ago()).isBetween(Duration.ofSeconds(599), Duration.ofSeconds(660));
    }

    @Test
    void aClockThatWasPutBackMakesNoReadingOfTheFuture() throws Exception {
        entry.put("takenAt", now().plusSeconds(600).toString());
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(ago()).isBetween(Duration.ZERO, Duration.ofMinutes(1));
    }

    @Test
    void aReasonIsStoredInsteadOfANumber() throws Exception {
        entry.remove("amount");
        entry.remove("meterId");
        entry.put("outcome", "COULD_NOT_REACH");
        send().andExpect(jsonPath("$.kind", is("STORED")));
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(database.queryForList("select outcome from unread_point where entry_key = ?", String.class, key))
                .containsExactly("COULD_NOT_REACH");
    }

    @Test
    void whatSomebodyElseTypedIsNotStoredUnderThisName() throws Exception {
        entry.put("personId", collection.person(site, Role.KEEPER).personId());
        send().andExpect(jsonPath("$.kind", is("REFUSED"))).andExpect(jsonPath("$.words", containsString("signed in")));
        assertThat(amounts()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-1", "100", "3.123", "1e400"})
    void whatNoMeterShowsIsRefusedInWords(String amount) throws Exception {
        entry.put("amount", new BigDecimal(amount));
        send().andExpect(status().isOk())
                .andExpect(jsonPath("$.kind", is("REFUSED")))
                .andExpect(jsonPath("$.words", containsString("Enter the UV index")));
        assertThat(amounts()).isEmpty();
    }

    @Test
    void aMeterOfAnotherQuantityIsRefused() throws Exception {
        MeterFacts lux = collection.meter(site, Quantity.ILLUMINANCE);
        entry.put("meterId", lux.id());
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
        assertThat(amounts()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"pointId", "meterId", "enclosureId"})
    void anotherSitesThingsAreRefused(String what) throws Exception {
        SiteFacts other = collection.site();
        SignedIn mover = collection.person(other, Role.KEEPER);
        Home theirs = collection.home(other, mover, collection.species(other, "Pogona vitticeps"));
        entry.put(
                what,
                switch (what) {
                    case "pointId" -> theirs.basking().id();
                    case "meterId" -> collection.meter(other).id();
                    default -> theirs.enclosureId();
                });
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
        assertThat(amounts()).isEmpty();
    }

    @Test
    void whatWaitedForMonthsIsNoReadingOfAWalk() throws Exception {
        entry.put("takenAt", now().minus(Duration.ofDays(91)).toString());
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
        assertThat(amounts()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "key",
                "visitKey",
                "personId",
                "enclosureId",
                "pointId",
                "quantity",
                "amount",
                "takenAt",
                "sentAt"
            })
    void anEntryMustBeWhole(String missing) throws Exception {
        entry.remove(missing);
        send().andExpect(status().isUnprocessableContent());
        assertThat(amounts()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"amount, NaN", "amount, three", "takenAt, yesterday", "quantity, BRIGHTNESS", "key, 7"})
    void whatCannotBeReadIsABadRequest(String what, String text) throws Exception {
        entry.put(what, text);
        send().andExpect(status().isBadRequest());
        assertThat(amounts()).isEmpty();
    }

    @Test
    void whoLogsNoReadingsMayNotSendAny() throws Exception {
        SignedIn inspector = collection.person(site, Role.INSPECTOR);
        pages.perform(posted().with(collection.as(inspector)).with(csrf())).andExpect(status().isForbidden());
    }

    @Test
    void withoutTokenNothingIsStored() throws Exception {
        pages.perform(posted().with(collection.as(keeper))).andExpect(status().isForbidden());
        assertThat(amounts()).isEmpty();
    }

    @Test
    void whoIsSignedOutIsSentToSignIn() throws Exception {
        pages.perform(get("/walk/ticket")).andExpect(redirectedUrl("/sign-in"));
    }

    @Test
    void aTicketNamesWhoIsSignedInAndAToken() throws Exception {
        pages.perform(get("/walk/ticket").with(collection.as(keeper)))
                .andExpect(jsonPath("$.personId", is((int) keeper.personId())))
                .andExpect(jsonPath("$.header", is("X-CSRF-TOKEN")))
                .andExpect(jsonPath("$.token").isNotEmpty());
    }

    /** The phone's own idea of what counts is not taken: the middle of the last three is. */
    @Test
    void ofRepeatsTheMiddleOneIsStoredWithAllOfThem() throws Exception {
        entry.put("repeats", List.of(2.0, 3.0, 4.0, 3.1, 3.2, 3.3));
        entry.put("amount", 3.3);
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(amounts()).containsExactly(3.2);
        assertThat(repeats()).containsExactly(2.0, 3.0, 4.0, 3.1, 3.2, 3.3);
    }

    @Test
    void repeatsThatWereLeftAreStoredAsTheyAre() throws Exception {
        entry.put("repeats", List.of(3.1, 3.4));
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(amounts()).containsExactly(3.4);
    }

    @Test
    void whatStoppedTheWalkCountsAlone() throws Exception {
        entry.put("repeats", List.of(3.1, 3.4, 9.9));
        entry.put("stopped", true);
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(amounts()).containsExactly(9.9);
    }

    @Test
    void aRepeatThatNoMeterShowsIsRefusedInWords() throws Exception {
        entry.put("repeats", List.of(3.1, 310.0, 3.2));
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
        assertThat(amounts()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 7})
    void noPageSendsNoneOrSevenRepeats(int count) throws Exception {
        entry.put("repeats", Collections.nCopies(count, 3.1));
        send().andExpect(status().isUnprocessableContent());
        assertThat(amounts()).isEmpty();
    }

    @Test
    void aNoteIsStoredOnce() throws Exception {
        say("note", "Mesh is dusty");
        send().andExpect(jsonPath("$.kind", is("STORED")));
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(database.queryForList("select note from visit_note where entry_key = ?", String.class, key))
                .containsExactly("Mesh is dusty");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "a\u0000b"})
    void whatIsNoNoteIsRefusedInWords(String text) throws Exception {
        say("note", text);
        send().andExpect(jsonPath("$.kind", is("REFUSED")))
                .andExpect(jsonPath("$.words", containsString("plain text")));
    }

    @Test
    void aNoteThatIsTooLongIsRefusedInWords() throws Exception {
        say("note", "a".repeat(501));
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
    }

    @Test
    void howTheCoverWasIsStoredOnce() throws Exception {
        say("cover", "OPEN");
        send().andExpect(jsonPath("$.kind", is("STORED")));
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(database.queryForList("select cover from visit_cover where entry_key = ?", String.class, key))
                .containsExactly("OPEN");
    }

    @Test
    void aNoteOnAnotherSitesDoorIsRefused() throws Exception {
        say("note", "Mesh is dusty");
        SiteFacts other = collection.site();
        entry.put(
                "enclosureId",
                collection
                        .home(other, collection.person(other, Role.KEEPER), collection.species(other, "Agama agama"))
                        .enclosureId());
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
    }

    private void say(String what, String text) {
        List.of("pointId", "quantity", "meterId", "amount").forEach(entry::remove);
        entry.put(what, text);
    }

    private List<Double> repeats() {
        return database.queryForList(
                "select p.amount from reading_repeat p join reading r on r.id = p.reading_id where r.entry_key = ? "
                        + "order by p.number",
                Double.class,
                key);
    }

    private ResultActions send() throws Exception {
        return pages.perform(posted().with(collection.as(keeper)).with(csrf()));
    }

    private MockHttpServletRequestBuilder posted() {
        return post("/walk/entries").contentType(MediaType.APPLICATION_JSON).content(json.writeValueAsString(entry));
    }

    private List<Double> amounts() {
        return database.queryForList("select amount from reading where entry_key = ?", Double.class, key);
    }

    private Duration ago() {
        Timestamp taken =
                database.queryForObject("select taken_at from reading where entry_key = ?", Timestamp.class, key);
        return Duration.between(Given.of(taken).toInstant(), now());
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }
}
