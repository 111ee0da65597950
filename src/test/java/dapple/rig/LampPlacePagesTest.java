package dapple.rig;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import dapple.enclosure.Enclosures;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** Where the pages of lamps say that these hang. */
@PagesTest
class LampPlacePagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

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
    private Asking asking;
    private long enclosureId;
    private LampFacts lamp;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD, Role.SUPERVISOR);
        asking = new Asking(pages, collection.as(lead));
        long room = enclosures.addRoom(site.id(), "Dry room", 1);
        enclosureId = enclosures.add(site.id(), room, "E77", 1, Optional.empty());
        lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
    }

    @Test
    void aLampThatHangsNowhereIsInStore() throws Exception {
        asking.see("/lamps").andExpect(content().string(allOf(containsString("in store"), not(containsString("E77")))));
        asking.see(page()).andExpect(content().string(containsString("in store")));
    }

    @Test
    void theListNamesTheEnclosureOfALampAndLinksIt() throws Exception {
        hang();
        asking.see("/lamps")
                .andExpect(content()
                        .string(allOf(containsString(link()), containsString("E77"), containsString("basking tube"))));
    }

    @Test
    void theLampsOwnPageNamesItToo() throws Exception {
        hang();
        asking.see(page()).andExpect(content().string(allOf(containsString(link()), containsString("E77"))));
    }

    @Test
    void aLampThatHangsStaysInUseAndIsTakenOutFirst() throws Exception {
        hang();
        asking.send(page() + "/retirement", Map.of("why", "BROKEN")).andExpect(redirectedUrl(page() + "?fitted"));
        asking.see(page() + "?fitted")
                .andExpect(content()
                        .string(allOf(
                                containsString("It hangs in E77, basking tube, so it stays in use."),
                                containsString("/removal\""))));
    }

    @Test
    void aLampThatWasTakenOutIsInStoreAgain() throws Exception {
        hang();
        changing.make(entry(), new LampStep.TakeOut(fitting()));
        asking.see(page() + "?fitted").andExpect(content().string(not(containsString("so it stays in use"))));
    }

    /** 10 h a day from 8 to 18 in London in winter, which is UTC: 6 h on the 10th, 10 h on the 11th, 1 h on the 12th. */
    @Test
    void itsPageComputesTheHoursThatItHasBurntByNow() throws Exception {
        changing.make(
                entry(Instant.parse("2026-01-10T12:00:00Z")),
                new LampStep.Fit(lamp.id(), RigExamples.hanging("basking tube")));
        changing.make(entry(Instant.parse("2026-01-12T09:00:00Z")), new LampStep.TakeOut(fitting()));
        asking.see(page())
                .andExpect(content()
                        .string(allOf(
                                containsString("Burn hours now</dt><dd>17 h"),
                                containsString("computed: its hours at entry, and its timers"))));
    }

    @Test
    void hoursWithoutATimerAreNotKnown() throws Exception {
        Hanging untimed = new Hanging("basking tube", Optional.empty(), Optional.empty(), Optional.empty());
        changing.make(entry(Instant.parse("2026-01-10T12:00:00Z")), new LampStep.Fit(lamp.id(), untimed));
        asking.see(page())
                .andExpect(content()
                        .string(allOf(
                                containsString("Burn hours now</dt><dd>not known"),
                                containsString("or a timer for some of the time it hung"))));
    }

    private long fitting() {
        return rigs.at(site.id(), enclosureId, clock.instant())
                .fittings()
                .get(0)
                .id();
    }

    private String page() {
        return "/lamps/" + lamp.id();
    }

    private String link() {
        return "href=\"/enclosures/" + enclosureId + "/rig";
    }

    private void hang() {
        changing.make(entry(), new LampStep.Fit(lamp.id(), RigExamples.hanging("basking tube")));
    }

    private RigEntry entry() {
        return entry(clock.instant());
    }

    private RigEntry entry(Instant at) {
        return new RigEntry(site.id(), enclosureId, at, "", lead.personId(), UUID.randomUUID(), Optional.empty());
    }
}
