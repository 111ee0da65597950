package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.lamp.LampClass;
import dapple.overview.AuditStory.Told;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.Targets;
import dapple.target.ZoneLimits;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import jakarta.persistence.EntityManagerFactory;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import org.hamcrest.Matcher;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
@TestPropertySource(properties = "spring.jpa.properties.hibernate.generate_statistics=true")
class AuditPagesTest {
    private static final String SHEET = "Who lived there";

    @Autowired
    private AuditStory story;

    @Autowired
    private TestCollection collection;

    @Autowired
    private EntityManagerFactory entities;

    @Autowired
    private Targets targets;

    @Autowired
    private ZoneLimits zoneLimits;

    @Autowired
    private MockMvc pages;

    private Told told;
    private SignedIn person;

    @BeforeEach
    void begin() {
        told = story.begin();
        person = collection.person(told.site, Role.INSPECTOR);
    }

    @Test
    void showsTheWholeOfNowToAnInspector() throws Exception {
        told.hangALampLate();
        told.read();
        told.order();
        assertShows(
                "",
                allOf(
                        containsString("basking tube"),
                        containsString(told.home.animal().name()),
                        containsString("2.9 to 7.4"),
                        containsString("eyes shut"),
                        containsString(told.meter.code()),
                        containsString("on target"),
                        containsString("no calibration")));
    }

    @Test
    void marksWhatWasRecordedLater() throws Exception {
        told.hangALampLate();
        assertShows("?at=" + local(told.minutesAgo(120)), containsString("recorded later, on"));
    }

    @Test
    void marksNothingThatWasOnRecord() throws Exception {
        told.hangALampLate();
        assertShows("", not(containsString("recorded later, on")));
    }

    @Test
    void marksATargetThatCountsForTimesBeforeItsApproval() throws Exception {
        SpeciesFacts species = collection.species(told.site, "Laudakia stellio");
        String audit = "/enclosures/"
                + collection.home(told.site, told.person, species).enclosureId() + "/audit";
        UvZone zone = new UvZone(3, LightMethod.SUNBEAM);
        Approval approval =
                new Approval(species.id(), zone, zoneLimits.of(zone), told.person.personId(), "agreed with the team");
        targets.approve(told.site.id(), approval.forEarlierReadings(true));
        pages.perform(get(audit + "?at=" + local(told.minutesAgo(30))).with(collection.as(person)))
                .andExpect(content().string(containsString("It was approved only later.")));
        pages.perform(get(audit).with(collection.as(person)))
                .andExpect(content().string(not(containsString("It was approved only later."))));
        pages.perform(get(audit + ".csv").with(collection.as(person)))
                .andExpect(content().string(allOf(containsString("2.9 to 7.4"), not(containsString("1970")))));
    }

    @Test
    void namesTheCalibrationOfAVerdictWithItsFactor() throws Exception {
        told.read();
        told.calibrateLate();
        assertShows("", containsString("calibration C-17, factor 0.5"));
    }

    @Test
    void saysWhatWasOnRecordAndIsKnownNowToHaveEnded() throws Exception {
        told.hangALampLate();
        told.takeItOutLate();
        assertShows("", not(containsString("known now to have ended")));
    }

    @Test
    void showsThatNothingIsKnownOfAnEmptyEnclosure() throws Exception {
        pages.perform(get("/enclosures/" + collection.emptyEnclosure(told.site) + "/audit")
                        .with(collection.as(person)))
                .andExpect(content()
                        .string(allOf(
                                containsString("Nothing is recorded that hangs or stands here."),
                                containsString("Nobody is known to have lived there then."),
                                containsString("Nothing had been read here."))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"yesterday", "1e400", "NaN", "-1", "2026-13-01T10:00"})
    void whatIsNoTimeIsSaidAndKept(String typed) throws Exception {
        assertShows(
                "?at=" + typed,
                allOf(
                        containsString("value=\"" + typed + "\""),
                        containsString("at-wrong"),
                        not(containsString(SHEET))));
    }

    @Test
    void aTimeAheadIsRefused() throws Exception {
        assertShows(
                "?at=" + local(told.minutesAgo(-120)), allOf(containsString("at-wrong"), not(containsString(SHEET))));
    }

    @Test
    void aYearBeforeAnyRecordIsRefused() throws Exception {
        assertShows("?at=1900-01-01T10:00", allOf(containsString("at-wrong"), not(containsString(SHEET))));
    }

    /** The clocks of London went from 1:00 to 2:00 on 30 March 2025 [tzdb]. */
    @Test
    void aTimeThatTheClocksSkippedIsRefused() throws Exception {
        assertShows("?at=2025-03-30T01:30", allOf(containsString("at-wrong"), not(containsString(SHEET))));
    }

    /** The clocks of London went from 2:00 back to 1:00 on 26 October 2025 [tzdb]. */
    @Test
    void aTimeThatCameTwiceIsAskedAbout() throws Exception {
        assertShows("?at=2025-10-26T01:30", allOf(containsString("name=\"atWhich\""), not(containsString(SHEET))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"FIRST", "SECOND"})
    void whichOfTwoIsTaken(String which) throws Exception {
        assertShows("?at=2025-10-26T01:30&atWhich=" + which, containsString("on 26 Oct 2025, 01:30"));
    }

    @Test
    void anotherSitesEnclosureIsNotFound() throws Exception {
        person = collection.person(collection.site(), Role.INSPECTOR);
        audit("").andExpect(status().isNotFound());
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"SUPERVISOR", "VET", "LIGHTING_LEAD", "INSPECTOR", "ADMINISTRATOR"})
    void isOpenToThoseWhoAnswerForIt(Role role) throws Exception {
        person = collection.person(told.site, role);
        audit("").andExpect(status().isOk());
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"KEEPER", "MAINTENANCE"})
    void isClosedToOthers(Role role) throws Exception {
        person = collection.person(told.site, role);
        audit("").andExpect(status().isForbidden());
    }

    @ParameterizedTest
    @ValueSource(strings = {"rig", "readings"})
    void isLinkedFromWhatItTellsOf(String page) throws Exception {
        String link = "/enclosures/" + told.home.enclosureId() + "/audit";
        pages.perform(get("/enclosures/" + told.home.enclosureId() + "/" + page).with(collection.as(person)))
                .andExpect(content().string(containsString(link)));
    }

    @Test
    void asksAsOftenForMuchAsForLittle() throws Exception {
        tellMuch();
        long few = statements();
        for (int again = 0; again < 3; again++) {
            tellMuch();
        }
        assertThat(statements()).isEqualTo(few);
    }

    private void tellMuch() {
        told.hangALampLate();
        told.read();
        told.readInTheShade();
        collection.lamp(told.site, collection.lampModel(told.site, LampClass.TUBE_T5));
        told.settleAnother();
    }

    private long statements() throws Exception {
        Statistics statistics = entities.unwrap(SessionFactory.class).getStatistics();
        long before = statistics.getPrepareStatementCount();
        audit("").andExpect(status().isOk());
        return statistics.getPrepareStatementCount() - before;
    }

    private String local(Instant at) {
        return LocalDateTime.ofInstant(at, told.site.timeZone())
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
    }

    private void assertShows(String query, Matcher<String> expected) throws Exception {
        audit(query).andExpect(status().isOk()).andExpect(content().string(expected));
    }

    private ResultActions audit(String query) throws Exception {
        return pages.perform(get("/enclosures/" + told.home.enclosureId() + "/audit" + query)
                .with(csrf())
                .with(collection.as(person)));
    }
}
