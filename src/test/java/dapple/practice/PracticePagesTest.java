package dapple.practice;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.light.quantity.Quantity;
import dapple.meter.MeterChange;
import dapple.meter.MeterFacts;
import dapple.meter.MeterRange;
import dapple.meter.MeterRegister;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** What is done with meters, on their page, and what it means where readings are shown and entered. */
@PagesTest
class PracticePagesTest {
    private static final Map<String, String> WRONG = Map.of("reason", "it was another meter");
    private static final String IN_DOUBT = "In doubt: the meter was dropped";

    @Autowired
    private TestCollection collection;

    @Autowired
    private MeterRegister register;

    @Autowired
    private PracticeRecord record;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private Asking asking;
    private MeterFacts meter;
    private Home home;
    private String page;

    @BeforeEach
    void furnish() {
        site = collection.site();
        SignedIn supervisor = collection.person(site, Role.SUPERVISOR);
        asking = new Asking(pages, collection.as(supervisor));
        meter = collection.meter(site);
        home = collection.home(site, supervisor, collection.species(site, "Pogona vitticeps"));
        page = "/meters/" + meter.id();
    }

    @Test
    void whatHappenedIsOnRecord() throws Exception {
        happened("LOST", "2026-03-01T10:00").andExpect(redirectedUrl(page + "/practice"));
        asking.see(page + "/practice")
                .andExpect(content()
                        .string(allOf(
                                containsString("lost since 1 Mar 2026"),
                                containsString("<strong>lost</strong>, by the door"))));
    }

    @Test
    void whatWasSentTwiceIsOnRecordOnce() throws Exception {
        Map<String, String> form = event("DROPPED", "2026-03-01T10:00");
        asking.send(page + "/events/new", form).andExpect(redirectedUrl(page + "/practice"));
        asking.send(page + "/events/new", form).andExpect(redirectedUrl(page + "/practice"));
        asking.see(page + "/practice")
                .andExpect(content()
                        .string(matchesPattern("(?s)(?!.*<strong>dropped</strong>.*<strong>dropped</strong>).*")));
    }

    @ParameterizedTest
    @CsvSource({
        "kind, ''",
        "kind, STOLEN",
        "at, ''",
        "at, soon",
        "at, 2199-01-01T10:00",
        "at, 1900-01-01T10:00",
        "at, 2026-03-29T01:30",
        "at, 2025-10-26T01:30"
    })
    void aWrongEventComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(page + "/events/new", event("LOST", "2026-03-01T10:00"), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"by the door\"")));
    }

    @ParameterizedTest
    @CsvSource({
        "amount, ''",
        "amount, dark",
        "amount, 1e400",
        "amount, NaN",
        "amount, -1000000",
        "at, ''",
        "at, 2199-01-01T10:00"
    })
    void aWrongCheckComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(page + "/dark-zero", check("0.1", "2026-03-01T10:00"), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"" + typed + "\"")));
    }

    @ParameterizedTest
    @CsvSource({"0.1, within the limits", "'0,3', beyond the limits"})
    void aDarkZeroIsHeldAgainstItsLimit(String shown, String result) throws Exception {
        asking.send(page + "/dark-zero", check(shown, "2026-03-01T10:00")).andExpect(redirectedUrl(page + "/practice"));
        asking.see(page + "/practice").andExpect(content().string(containsString(result)));
    }

    @Test
    void aThermometerHasNoDarkZero() throws Exception {
        long thermometer = collection.meter(site, Quantity.AIR_TEMPERATURE).id();
        asking.see("/meters/" + thermometer + "/dark-zero").andExpect(status().isNotFound());
    }

    @Test
    void withoutAReferenceLampThereIsNoCheckByIt() throws Exception {
        asking.see(page + "/lamp-check").andExpect(status().isNotFound());
    }

    @ParameterizedTest
    @CsvSource({
        "name, ''",
        "setUp, ''",
        "firstAmount, ''",
        "firstAmount, 0",
        "firstAmount, -2",
        "firstAmount, NaN",
        "at, ''"
    })
    void aWrongReferenceLampComesBackWithAMessageAtTheField(String field, String typed) throws Exception {
        asking.send(page + "/reference-lamp", lamp("L90", "2.0"), field, typed)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")));
    }

    /** 2.06 over 2.0 is 3.0 % more; 2.2 over 2.0 is 10.0 % more, beyond 5 %. */
    @Test
    void checksByTheLampAreDrawnAndListedAgainstTheFirstValue() throws Exception {
        nameLamp();
        lampCheck("2.06", "2026-03-08T10:00");
        lampCheck("2.2", "2026-03-15T10:00");
        asking.see(page + "/practice")
                .andExpect(content()
                        .string(allOf(
                                containsString("+3.0 %"),
                                containsString("+10.0 %"),
                                containsString("class=\"cross\""),
                                containsString("Next check due 22 Mar 2026"))));
    }

    @Test
    void whoChecksIsNotToldTheFirstValue() throws Exception {
        asking.send(page + "/reference-lamp", lamp("L90", "2.4711"));
        asking.see(page + "/lamp-check")
                .andExpect(content().string(allOf(containsString("L90"), not(containsString("2.4711")))));
    }

    @Test
    void anotherLampTakesItsPlace() throws Exception {
        nameLamp();
        asking.send(page + "/reference-lamp", lamp("L91", "3.0")).andExpect(redirectedUrl(page + "/practice"));
        asking.see(page + "/practice")
                .andExpect(content().string(allOf(containsString("L91: first 3 UVI"), not(containsString("L90:")))));
    }

    @Test
    void aReadingWithADroppedMeterIsMarkedUntilACheckClearsIt() throws Exception {
        String reading = read("3.4", Map.of());
        happened("DROPPED", now());
        asking.see(reading).andExpect(content().string(containsString(IN_DOUBT)));
        asking.send(page + "/dark-zero", check("0.0", now()));
        asking.see(reading).andExpect(content().string(not(containsString(IN_DOUBT))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/enclosures/%d/readings", "/enclosures/%d", "/enclosures/%d/audit?at="})
    void theMarkStandsWhereverTheReadingIsShown(String path) throws Exception {
        read("3.4", Map.of());
        happened("DROPPED", now());
        asking.see(path.formatted(home.enclosureId())).andExpect(content().string(containsString(IN_DOUBT)));
    }

    @Test
    void aFailedCheckCondemnsWhatWasRead() throws Exception {
        String reading = read("3.4", Map.of());
        happened("DROPPED", now());
        asking.send(page + "/dark-zero", check("0.9", now()));
        asking.see(reading).andExpect(content().string(containsString("Not to be relied on: the meter was dropped")));
    }

    @Test
    void theMetersListSaysHowEachStands() throws Exception {
        happened("BROKEN", "2026-03-01T10:00");
        asking.see("/meters")
                .andExpect(content()
                        .string(allOf(containsString("broken since 1 Mar 2026"), containsString("never calibrated"))));
    }

    @Test
    void whatIsDueStandsOnTodayOfWhoKeepsMeters() throws Exception {
        nameLamp();
        asking.see("/")
                .andExpect(content()
                        .string(allOf(
                                containsString("Meters to see to"), containsString("check by the reference lamp"))));
    }

    @Test
    void aKeeperIsNotAskedToSeeToMeters() throws Exception {
        nameLamp();
        Asking keeper = new Asking(pages, collection.as(collection.person(site, Role.KEEPER)));
        keeper.see("/").andExpect(content().string(not(containsString("Meters to see to"))));
    }

    @Test
    void atEntryItIsSaidHowTheMeterStands() throws Exception {
        happened("LOST", "2026-03-01T10:00");
        asking.see(point())
                .andExpect(content()
                        .string(allOf(
                                containsString(", UV index meter: lost since 1 Mar 2026, never calibrated"),
                                containsString("Know of " + meter.code()))));
    }

    @Test
    void aMeterAtHandIsOfferedBeforeALostOne() throws Exception {
        MeterFacts other = collection.meter(site);
        happened("LOST", "2026-03-01T10:00");
        asking.see(point()).andExpect(content().string(containsString("Know of " + other.code())));
    }

    @Test
    void aNumberThatTheMeterCannotShowIsAskedAbout() throws Exception {
        range(0, 20);
        asking.send(point(), entry("34", Map.of()))
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                containsString("shows 0 to 20 UVI, by the register"), containsString("value=\"34\""))));
    }

    @Test
    void theSameNumberOnceMoreIsKeptAndMarked() throws Exception {
        range(0, 20);
        asking.see(read("34", Map.of("sure", "34")))
                .andExpect(content().string(containsString("It lies outside what " + meter.code() + " shows")));
    }

    @Test
    void anotherNumberOutOfRangeIsAskedAboutAnew() throws Exception {
        range(0, 20);
        asking.send(point(), entry("43", Map.of("sure", "34")))
                .andExpect(content().string(containsString("by the register")));
    }

    @Test
    void aWithdrawnEventStaysOnRecordWithItsReason() throws Exception {
        happened("LOST", "2026-03-01T10:00");
        asking.send(withdrawal(), WRONG).andExpect(redirectedUrl(page + "/practice"));
        asking.see(page + "/practice")
                .andExpect(content()
                        .string(allOf(
                                containsString("<strong>lost</strong>, by the door"),
                                containsString("it was another meter"),
                                not(containsString("lost since 1 Mar 2026")))));
    }

    @Test
    void aReadingIsInDoubtNoMoreWhenItsDropIsWithdrawn() throws Exception {
        String reading = read("3.4", Map.of());
        happened("DROPPED", now());
        asking.send(withdrawal(), WRONG);
        asking.see(reading).andExpect(content().string(not(containsString(IN_DOUBT))));
    }

    @Test
    void anEventIsNotWithdrawnTwice() throws Exception {
        happened("LOST", "2026-03-01T10:00");
        String withdrawal = withdrawal();
        asking.send(withdrawal, WRONG);
        asking.send(withdrawal, Map.of("reason", "once more"))
                .andExpect(status().isConflict())
                .andExpect(content()
                        .string(allOf(
                                containsString("It was withdrawn already"), containsString("it was another meter"))));
    }

    @Test
    void nobodyWithdrawsWithoutAReason() throws Exception {
        happened("LOST", "2026-03-01T10:00");
        asking.send(withdrawal(), Map.of("reason", " "))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"reason-wrong\"")));
    }

    @Test
    void whoLogsNoReadingsWithdrawsNothing() throws Exception {
        happened("LOST", "2026-03-01T10:00");
        String withdrawal = withdrawal();
        Asking vet = new Asking(pages, collection.as(collection.person(site, Role.VET)));
        vet.send(withdrawal, WRONG).andExpect(status().isForbidden());
    }

    @Test
    void anEventOfAnotherSiteIsNotFound() throws Exception {
        happened("LOST", "2026-03-01T10:00");
        String withdrawal = withdrawal();
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        new Asking(pages, collection.as(stranger)).see(withdrawal).andExpect(status().isNotFound());
    }

    @Test
    void anEventOfAnotherMeterIsNotFound() throws Exception {
        happened("LOST", "2026-03-01T10:00");
        String elsewhere = "/meters/" + collection.meter(site).id();
        asking.see(withdrawal().replace(page, elsewhere)).andExpect(status().isNotFound());
    }

    private String withdrawal() {
        return page + "/events/" + record.events(site.id(), meter.id()).get(0).id() + "/withdrawal";
    }

    private void range(double low, double high) {
        MeterChange state = register.get(site.id(), meter.id()).state();
        register.change(
                site.id(),
                meter.id(),
                0,
                new MeterChange(
                        state.code(),
                        state.description(),
                        state.resolution(),
                        Optional.of(new MeterRange(low, high)),
                        state.stated(),
                        state.loan(),
                        state.note()));
    }

    private ResultActions happened(String kind, String at) throws Exception {
        return asking.send(page + "/events/new", event(kind, at));
    }

    private void nameLamp() throws Exception {
        asking.send(page + "/reference-lamp", lamp("L90", "2.0")).andExpect(redirectedUrl(page + "/practice"));
    }

    private void lampCheck(String shown, String at) throws Exception {
        asking.send(page + "/lamp-check", check(shown, at)).andExpect(redirectedUrl(page + "/practice"));
    }

    private String point() {
        return "/enclosures/" + home.enclosureId() + "/visits/" + UUID.randomUUID() + "/points/"
                + home.basking().id();
    }

    private String read(String amount, Map<String, String> besides) throws Exception {
        String address = asking.send(point(), entry(amount, besides))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Optional.ofNullable(address).orElseThrow();
    }

    private Map<String, String> entry(String amount, Map<String, String> besides) {
        Map<String, String> form = new HashMap<>(besides);
        form.put("key", UUID.randomUUID().toString());
        form.put("meterId", String.valueOf(meter.id()));
        form.put("amount", amount);
        return form;
    }

    private String now() {
        return local(clock.instant());
    }

    private static String local(Instant at) {
        return at.atZone(ZoneId.of("Europe/London"))
                .toLocalDateTime()
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
    }

    private static Map<String, String> event(String kind, String at) {
        return Map.of("key", UUID.randomUUID().toString(), "kind", kind, "note", "by the door", "at", at);
    }

    private static Map<String, String> check(String amount, String at) {
        return Map.of("key", UUID.randomUUID().toString(), "amount", amount, "note", "", "at", at);
    }

    private static Map<String, String> lamp(String name, String amount) {
        return Map.of(
                "key",
                UUID.randomUUID().toString(),
                "name",
                name,
                "setUp",
                "holder at 30 cm",
                "firstAmount",
                amount,
                "at",
                "2026-03-01T10:00");
    }
}
