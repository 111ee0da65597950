package dapple.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.Ballast;
import dapple.rig.DailyTimer;
import dapple.rig.Gear;
import dapple.rig.Hanging;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampStep;
import dapple.rig.MonthlyTimer;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** Timers that change over the year, and what feeds a lamp, by their forms. */
@PagesTest
class SeasonFormsPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private long enclosureId;
    private LampFacts lamp;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        enclosureId = collection.emptyEnclosure(site);
        lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        changing.make(
                new RigEntry(
                        site.id(),
                        enclosureId,
                        clock.instant().minus(Duration.ofDays(3)),
                        "",
                        lead.personId(),
                        UUID.randomUUID(),
                        Optional.empty()),
                new LampStep.Fit(lamp.id(), RigExamples.hanging("basking tube")));
    }

    @Test
    void aMonthThatIsLeftEmptyTakesTheTimesOfTheOneBefore() throws Exception {
        send(months("timer").param("monthDark", "12")).andExpect(status().is3xxRedirection());
        MonthlyTimer timer = (MonthlyTimer) hanging().timer().orElseThrow();
        assertThat(timer.of(Month.MAY)).contains(new DailyTimer(LocalTime.of(9, 0), LocalTime.of(17, 0)));
        assertThat(timer.of(Month.JUNE)).contains(new DailyTimer(LocalTime.of(7, 0), LocalTime.of(21, 0)));
        assertThat(timer.of(Month.NOVEMBER)).contains(new DailyTimer(LocalTime.of(7, 0), LocalTime.of(21, 0)));
        assertThat(timer.of(Month.DECEMBER)).isEmpty();
    }

    @Test
    void theFormOpensWithTheMonthsAsTheyAre() throws Exception {
        send(months("timer").param("monthDark", "12"));
        see("timer")
                .andExpect(content()
                        .string(allOf(
                                containsString("name=\"monthOn\" autocomplete=\"off\" value=\"07:00\""),
                                containsString("December: off all the month\" checked"),
                                containsString("value=\"MONTHLY\" selected"))));
    }

    @ParameterizedTest
    @CsvSource({"'',''", "08:00,''", "'',18:00", "8 o'clock,18:00", "25:00,18:00", "NaN,18:00", "-1,18:00"})
    void aJanuaryThatIsNoneComesBackAsTyped(String on, String off) throws Exception {
        send(timer("timer", "MONTHLY").param("monthOn", on, "07:00").param("monthOff", off, "21:00"))
                .andExpect(content()
                        .string(allOf(
                                containsString("id=\"month1-wrong\""),
                                not(containsString("id=\"month2-wrong\"")),
                                containsString("value=\"21:00\""))));
        assertThat(hanging().timer()).contains(RigExamples.tenHours());
    }

    /** Where another field cannot be read at all there is no form to read from. */
    @Test
    void monthsAreKeptWhereTheTimeOfTheChangeCannotBeRead() throws Exception {
        send(months("timer").param("at", "yesterday"))
                .andExpect(
                        content().string(allOf(containsString("id=\"at-wrong\""), containsString("value=\"21:00\""))));
    }

    @Test
    void aHomeDayIsFollowed() throws Exception {
        send(home("-23,5", "13:00", "20", "10", "14,5").param("homeShifted", "true"))
                .andExpect(status().is3xxRedirection());
        assertThat(hanging().timer()).contains(new HomeDayTimer(-23.5, true, LocalTime.of(13, 0), 20, 600, 870));
    }

    @Test
    void aHomeDayWithoutLimitsIsAsLongAsItComes() throws Exception {
        send(home("40", "13:00", "", "", "")).andExpect(status().is3xxRedirection());
        assertThat(hanging().timer()).contains(new HomeDayTimer(40, false, LocalTime.of(13, 0), 0, 0, 1440));
    }

    @ParameterizedTest
    @CsvSource({
        "'',13:00,0,10,14,homeLatitude",
        "91,13:00,0,10,14,homeLatitude",
        "1e400,13:00,0,10,14,homeLatitude",
        "NaN,13:00,0,10,14,homeLatitude",
        "north,13:00,0,10,14,homeLatitude",
        "40,'',0,10,14,homeMiddle",
        "40,noon,0,10,14,homeMiddle",
        "40,13:00,181,10,14,homePlus",
        "40,13:00,0.5,10,14,homePlus",
        "40,13:00,0,-1,14,homeShortest",
        "40,13:00,0,10,25,homeLongest",
        "40,13:00,0,14,10,homeLongest",
    })
    void aHomeDayThatIsNoneComesBackAsTyped(
            String latitude, String middle, String plus, String shortest, String longest, String field)
            throws Exception {
        send(home(latitude, middle, plus, shortest, longest))
                .andExpect(content()
                        .string(allOf(
                                containsString("id=\"" + field + "-wrong\""),
                                containsString("name=\"homeLatitude\" value=\"" + latitude))));
        assertThat(hanging().timer()).contains(RigExamples.tenHours());
    }

    @Test
    void aTimerOfNoKindIsRefused() throws Exception {
        send(timer("timer", "YEARLY")).andExpect(content().string(containsString("id=\"timerKind-wrong\"")));
    }

    @Test
    void aLampMayComeWithATimerByMonthAndItsGear() throws Exception {
        LampFacts other = collection.lamp(site, collection.lampModel(site, LampClass.TUNGSTEN_HALOGEN));
        send(timer("../lamps/new", "MONTHLY")
                        .param("lampId", String.valueOf(other.id()))
                        .param("place", "spot")
                        .param("monthOn", "09:00")
                        .param("monthOff", "17:00")
                        .param("control", "DIMMED")
                        .param("voltagePercent", "70"))
                .andExpect(status().is3xxRedirection());
        Hanging hanging = rigs.at(site.id(), enclosureId, clock.instant())
                .fittings()
                .get(1)
                .hanging();
        assertThat(hanging.gear()).isEqualTo(Gear.dimmedTo(0.7));
        assertThat(hanging.timer()).containsInstanceOf(MonthlyTimer.class);
    }

    @Test
    void gearIsPutOnRecord() throws Exception {
        send(dated("gear").param("ballast", "THERE").param("control", "SWITCHED"))
                .andExpect(status().is3xxRedirection());
        assertThat(hanging().gear().ballast()).contains(Ballast.THERE);
        see("gear").andExpect(content().string(containsString("value=\"THERE\" selected")));
    }

    @ParameterizedTest
    @CsvSource({
        "SWITCHED,70,voltagePercent",
        "'',70,voltagePercent",
        "DIMMED,39,voltagePercent",
        "DIMMED,101,voltagePercent",
        "DIMMED,half,voltagePercent",
        "DIMMED,NaN,voltagePercent",
        "DIMMED,1e400,voltagePercent",
        "SOMEHOW,70,control",
    })
    void gearThatIsNoneComesBackAsTyped(String control, String percent, String field) throws Exception {
        send(dated("gear").param("control", control).param("voltagePercent", percent))
                .andExpect(content()
                        .string(allOf(
                                containsString("id=\"" + field + "-wrong\""),
                                containsString("value=\"" + percent + "\""))));
        assertThat(hanging().gear()).isEqualTo(Gear.UNKNOWN);
    }

    @Test
    void cautionsOfMainsStandBesideGear() throws Exception {
        see("gear").andExpect(content().string(containsString("data-caution=\"MAINS\"")));
    }

    @Test
    void aSwapShowsTheGearThatIsThere() throws Exception {
        send(dated("gear").param("ballast", "MISSING"));
        see("swap").andExpect(content().string(containsString("value=\"MISSING\" selected")));
    }

    private MockHttpServletRequestBuilder home(
            String latitude, String middle, String plus, String shortest, String longest) {
        return timer("timer", "HOME_DAY")
                .param("homeLatitude", latitude)
                .param("homeMiddle", middle)
                .param("homePlus", plus)
                .param("homeShortest", shortest)
                .param("homeLongest", longest);
    }

    private MockHttpServletRequestBuilder months(String deed) {
        return timer(deed, "MONTHLY")
                .param("monthOn", "09:00", "", "", "", "", "07:00", "", "", "", "", "", "")
                .param("monthOff", "17:00", "", "", "", "", "21:00", "", "", "", "", "", "");
    }

    private MockHttpServletRequestBuilder timer(String deed, String kind) {
        return dated(deed).param("timerKind", kind);
    }

    private MockHttpServletRequestBuilder dated(String deed) {
        String path = deed.startsWith("../lamps") ? rig() + "/lamps/new" : fitting() + "/" + deed;
        return post(path)
                .param("key", UUID.randomUUID().toString())
                .param("seen", String.valueOf(rigs.lastRecorded(site.id(), enclosureId)))
                .param("at", yesterday());
    }

    private String yesterday() {
        return LocalDateTime.ofInstant(clock.instant().minus(Duration.ofDays(1)), site.timeZone())
                .toString()
                .substring(0, 16);
    }

    private String rig() {
        return "/enclosures/" + enclosureId + "/rig";
    }

    private String fitting() {
        long id = rigs.at(site.id(), enclosureId, clock.instant())
                .fittings()
                .get(0)
                .id();
        return rig() + "/lamps/" + id;
    }

    private Hanging hanging() {
        return rigs.at(site.id(), enclosureId, clock.instant())
                .fittings()
                .get(0)
                .hanging();
    }

    private ResultActions see(String deed) throws Exception {
        return pages.perform(get(fitting() + "/" + deed).with(csrf()).with(collection.as(lead)));
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return pages.perform(request.with(csrf()).with(collection.as(lead)));
    }
}
