package dapple.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Correction;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.ReadingWithdrawing;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.util.StringUtils;

@PagesTest
class AlarmPagesTest {
    private static final String BANNER = "Raise the lamp or switch it off now.";
    private static final long MAIL_WAITED_FOR_MILLIS = 10_000;
    private static final GreenMail MAIL = started();

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Meters meters;

    @Autowired
    private ReadingWithdrawing withdrawing;

    @Autowired
    private Alarms alarms;

    @Autowired
    private Animals animals;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private SignedIn supervisor;
    private Home home;

    private static GreenMail started() {
        GreenMail mail = new GreenMail(ServerSetup.SMTP.dynamicPort());
        mail.start();
        return mail;
    }

    @DynamicPropertySource
    static void mailServer(DynamicPropertyRegistry properties) {
        properties.add("spring.mail.host", () -> "127.0.0.1");
        properties.add("spring.mail.port", () -> MAIL.getSmtp().getPort());
        properties.add("dapple.alarm.mail-to", () -> "lead@house.example");
    }

    @AfterAll
    static void stop() {
        MAIL.stop();
    }

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        supervisor = collection.person(site, Role.SUPERVISOR);
        home = collection.home(
                site,
                supervisor,
                collection.species(site, supervisor, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
    }

    @Test
    void aReadingUnderTheCeilingAlarmsNobody() throws Exception {
        read(7.0);
        see("/").andExpect(content().string(not(containsString(BANNER))));
    }

    @Test
    void aLateCalibrationThatPutsItOverTheCeilingAlarms() throws Exception {
        MeterFacts meter = collection.meter(site);
        read(meter, home.basking(), 7.0);
        calibrate(meter, 1.3);
        see("/").andExpect(content().string(containsString(BANNER)));
    }

    @Test
    void whatHasBeenReadAgainSinceAlarmsNobodyLater() throws Exception {
        MeterFacts meter = collection.meter(site);
        read(meter, home.basking(), 7.0);
        read(home.basking(), 4.0);
        calibrate(meter, 1.3);
        see("/").andExpect(content().string(not(containsString(BANNER))));
    }

    private void calibrate(MeterFacts meter, double factor) {
        Instant yesterday = clock.instant().minus(Duration.ofDays(1));
        meters.calibrate(
                site.id(),
                meter.id(),
                new NewCalibration(yesterday, factor, LocalDate.of(2040, 1, 1), "late certificate"),
                supervisor.personId());
    }

    @Test
    void aReadingOverTheCeilingStandsOnEveryPage() throws Exception {
        read(9.1);
        for (String page : new String[] {"/", "/review", "/animals", "/rooms", "/more", "/account"}) {
            see(page).andExpect(content().string(containsString(BANNER)));
        }
    }

    @Test
    void itIsNoBusinessOfAnotherSite() throws Exception {
        read(9.1);
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        pages.perform(get("/").with(collection.as(stranger)))
                .andExpect(content().string(not(containsString(BANNER))));
    }

    @Test
    void whoHasSeenItEndsTheBannerForAll() throws Exception {
        read(9.1);
        seen(supervisor).andExpect(redirectedUrl("/enclosures/" + home.enclosureId()));
        pages.perform(get("/").with(collection.as(keeper))).andExpect(content().string(not(containsString(BANNER))));
    }

    @Test
    void anotherSiteCannotEndIt() throws Exception {
        read(9.1);
        seen(collection.person(collection.site(), Role.SUPERVISOR)).andExpect(status().isNotFound());
    }

    @Test
    void aCorrectedNumberAlarmsNobodyAnyMore() throws Exception {
        long reading = read(9.1);
        logging.correct(
                new Visitor(site.id(), keeper.personId()), reading, new Correction(UUID.randomUUID(), 5.1, "misread"));
        see("/").andExpect(content().string(not(containsString(BANNER))));
    }

    @Test
    void whenTheAnimalHasLeftItStaysToBeSeenAndSaysSo() throws Exception {
        read(9.1);
        leave();
        see("/").andExpect(content()
                .string(allOf(
                        containsString("The animals for which it was read have left"),
                        containsString("for animals that have left since: what to do"),
                        containsString("I have seen this"))));
    }

    @Test
    void readAgainAndNotOverItStaysToBeSeenAndSaysSo() throws Exception {
        read(9.1);
        read(home.basking(), 3.1);
        see("/").andExpect(content()
                .string(allOf(
                        containsString("Read again since, it was not."),
                        containsString("below the ceiling since: the reading"),
                        containsString("I have seen this"),
                        not(containsString(BANNER)))));
    }

    @Test
    void readAgainAndStillOverItSaysWhatToDo() throws Exception {
        read(9.1);
        read(home.basking(), 9.0);
        see("/").andExpect(content().string(containsString(BANNER)));
    }

    @Test
    void whoHasSeenItEndsItWhoeverLivesThere() throws Exception {
        read(9.1);
        leave();
        seen(supervisor);
        assertThat(alarms.unseen(site.id())).isEmpty();
    }

    @Test
    void anotherOfTheSpeciesThatMovedInLivesUnderIt() throws Exception {
        read(9.1);
        leave();
        AnimalFacts next = animals.add(
                site.id(), new NewAnimal("2026-N", "Next", home.animal().speciesId()));
        animals.move(site.id(), new Arrival(next.id(), home.enclosureId(), clock.instant(), keeper.personId()));
        see("/").andExpect(content().string(containsString(BANNER)));
    }

    @Test
    void aLateCalibrationThatPutsItUnderTheCeilingStaysToBeSeenAndSaysSo() throws Exception {
        MeterFacts meter = collection.meter(site);
        read(meter, home.basking(), 9.1);
        calibrate(meter, 0.5);
        see("/").andExpect(content()
                .string(allOf(
                        containsString("By what is known now it was not."),
                        containsString("judged otherwise since"),
                        not(containsString(BANNER)))));
    }

    private void leave() {
        animals.move(
                site.id(),
                new Arrival(home.animal().id(), collection.emptyEnclosure(site), clock.instant(), keeper.personId()));
    }

    @Test
    void aWithdrawnReadingAlarmsNobodyAnyMore() throws Exception {
        long reading = read(9.1);
        withdrawing.withdraw(new Visitor(site.id(), keeper.personId()), reading, "read at the wrong enclosure");
        see("/").andExpect(content().string(not(containsString(BANNER))));
    }

    @Test
    void onARoundItLeavesRoomForTheNextReading() throws Exception {
        read(9.1);
        String enclosure = "/enclosures/" + home.enclosureId();
        String asked = Optional.ofNullable(
                        pages.perform(get(enclosure + "/visit").with(collection.as(keeper)))
                                .andReturn()
                                .getResponse()
                                .getRedirectedUrl())
                .orElseThrow();
        pages.perform(get(asked).with(collection.as(keeper)))
                .andExpect(content()
                        .string(matchesPattern("(?s).*<details[^>]*>\\s*<summary>Over the ceiling: .*"
                                + Pattern.quote(BANNER) + ".*")));
    }

    @Test
    void thePointFarthestOverItsCeilingIsNamed() throws Exception {
        read(9.1);
        read(home.nearest(), 9.8);
        see("/").andExpect(content().string(containsString(home.nearest().code() + " 9.8 UVI")));
    }

    @Test
    void theReadingAlarmsOnce() {
        read(9.1);
        assertThat(alarms.unseen(site.id())).hasSize(1);
    }

    @Test
    void theReadingsOfAnEnclosureStandInOneBanner() throws Exception {
        read(9.1);
        read(home.nearest(), 9.8);
        assertThat(StringUtils.countOccurrencesOf(bodyOf("/"), BANNER)).isEqualTo(1);
    }

    @Test
    void whoHasSeenTheLastHasSeenThoseShownWithIt() throws Exception {
        read(9.1);
        read(home.nearest(), 9.8);
        see(supervisor, 1);
        assertThat(alarms.unseen(site.id())).isEmpty();
    }

    @Test
    void whatCameAfterTheAnswerStaysUnseen() throws Exception {
        read(9.1);
        read(home.nearest(), 9.8);
        see(supervisor, 0);
        assertThat(alarms.unseen(site.id())).hasSize(1);
    }

    private String bodyOf(String page) throws Exception {
        return see(page).andReturn().getResponse().getContentAsString();
    }

    @Test
    void itIsMailedWhereMailIsSetUp() throws Exception {
        MAIL.purgeEmailFromAllMailboxes();
        read(9.1);
        assertThat(MAIL.waitForIncomingEmail(MAIL_WAITED_FOR_MILLIS, 1)).isTrue();
        assertThat(MAIL.getReceivedMessages()[0].getSubject()).endsWith("is over the ceiling");
    }

    private ResultActions see(String page) throws Exception {
        return pages.perform(get(page).with(csrf()).with(collection.as(supervisor)));
    }

    @Test
    void anInspectorIsToldButAnswersNothing() throws Exception {
        read(9.1);
        SignedIn inspector = collection.person(site, Role.INSPECTOR);
        seen(inspector).andExpect(status().isForbidden());
        pages.perform(get("/").with(collection.as(inspector)))
                .andExpect(content().string(containsString(BANNER)))
                .andExpect(content().string(not(containsString("I have seen this"))));
    }

    private ResultActions seen(SignedIn person) throws Exception {
        return see(person, 0);
    }

    private ResultActions see(SignedIn person, int at) throws Exception {
        long alarm = alarms.unseen(site.id()).get(at).id();
        return pages.perform(post("/alarms/{id}/seen", alarm).with(csrf()).with(collection.as(person)));
    }

    private long read(double uvi) {
        return read(home.basking(), uvi);
    }

    private long read(PointFacts point, double uvi) {
        return read(collection.meter(site), point, uvi);
    }

    private long read(MeterFacts meter, PointFacts point, double uvi) {
        VisitPlace place = new VisitPlace(UUID.randomUUID(), home.enclosureId(), point.id());
        return logging.log(
                new Visitor(site.id(), keeper.personId()),
                new Entry(UUID.randomUUID(), place, meter.id(), uvi, clock.instant()));
    }
}
