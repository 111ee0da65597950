package dapple.season;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.DailyTimer;
import dapple.rig.Hanging;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampStep;
import dapple.rig.LampTimer;
import dapple.rig.MonthlyTimer;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@PagesTest
class TimersPagesTest {
    private static final DailyTimer NINE_TO_FIVE = new DailyTimer(LocalTime.of(9, 0), LocalTime.of(17, 0));

    @Autowired
    private TestCollection collection;

    @Autowired
    private RigChanging changing;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private long enclosureId;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        enclosureId = collection.emptyEnclosure(site);
    }

    @Test
    void withoutALampThePageSaysSo() throws Exception {
        see("", containsString("No lamp hangs here."));
        see("/sheet", containsString("No lamp hangs here."));
    }

    @Test
    void aDailyTimerIsTheSameEachMonth() throws Exception {
        fit(LampClass.LED_BAR, NINE_TO_FIVE);
        see("", allOf(containsString("<span>09:00</span>"), containsString("background light"), containsString("8.0")));
    }

    /** 8 h on each day of a year to come, which has a 29 February or not. */
    @Test
    void theHoursToComeFollowFromTheTimer() throws Exception {
        fit(LampClass.LED_BAR, NINE_TO_FIVE);
        LocalDate today = LocalDate.now(site.timeZone());
        long days = ChronoUnit.DAYS.between(today, today.plusYears(1));
        see("", containsString(days == 366 ? "2,928 h" : "2,920 h"));
    }

    @Test
    void aLampWithoutTimerIsSaid() throws Exception {
        LampFacts lamp = fit(LampClass.LED_BAR, Optional.empty());
        see("", containsString("No timer is on record for " + lamp.tag()));
    }

    @Test
    void aMonthOffIsSaid() throws Exception {
        List<Optional<DailyTimer>> months = new ArrayList<>(Collections.nCopies(12, Optional.of(NINE_TO_FIVE)));
        months.set(0, Optional.empty());
        fit(LampClass.TUNGSTEN_HALOGEN, new MonthlyTimer(months));
        see("", allOf(containsString("by month, 0.0 to 8.0"), not(containsString("without background light"))));
    }

    @Test
    void baskingLampsAloneAreSaid() throws Exception {
        fit(LampClass.TUNGSTEN_HALOGEN, NINE_TO_FIVE);
        see("", containsString("No other light than basking lamps"));
    }

    @Test
    void baskingLampsInTheDarkAreSaid() throws Exception {
        fit(LampClass.TUNGSTEN_HALOGEN, new DailyTimer(LocalTime.of(8, 30), LocalTime.of(17, 0)));
        fit(LampClass.LED_BAR, NINE_TO_FIVE);
        see("", containsString("Basking lamps burn 30 min without background light"));
    }

    @Test
    void aHomeDayIsSetAnewEachWeekOnTheSheet() throws Exception {
        fit(LampClass.LED_BAR, new HomeDayTimer(-23.5, false, LocalTime.of(13, 0), 20, 0, 1440));
        see("", containsString("as the day at 23.5°\u00a0S"));
        see("/sheet", allOf(containsString("set anew each Monday"), containsString("From Monday")));
    }

    @Test
    void cautionsOfMainsStandOnTheSheet() throws Exception {
        fit(LampClass.LED_BAR, NINE_TO_FIVE);
        see("/sheet", containsString("data-caution=\"MAINS\""));
    }

    @Test
    void anotherSitesTimersAreNotFound() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.LIGHTING_LEAD);
        for (String page : List.of("", "/sheet")) {
            pages.perform(get("/enclosures/" + enclosureId + "/timers" + page).with(collection.as(stranger)))
                    .andExpect(status().isNotFound());
        }
    }

    private LampFacts fit(LampClass kind, LampTimer timer) {
        return fit(kind, Optional.of(timer));
    }

    private LampFacts fit(LampClass kind, Optional<LampTimer> timer) {
        LampFacts lamp = collection.lamp(site, collection.lampModel(site, kind));
        RigEntry entry = new RigEntry(
                site.id(),
                enclosureId,
                clock.instant().minus(Duration.ofDays(3)),
                "",
                lead.personId(),
                UUID.randomUUID(),
                Optional.empty());
        Hanging hanging = new Hanging(lamp.tag(), Optional.empty(), timer, Optional.empty());
        changing.make(entry, new LampStep.Fit(lamp.id(), hanging));
        return lamp;
    }

    private void see(String page, Matcher<String> found) throws Exception {
        pages.perform(get("/enclosures/" + enclosureId + "/timers" + page).with(collection.as(lead)))
                .andExpect(status().isOk())
                .andExpect(content().string(found));
    }
}
