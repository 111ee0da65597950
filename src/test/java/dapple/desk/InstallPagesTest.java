package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.draft.DraftLamp;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.DraftSeen;
import dapple.draft.Drafts;
import dapple.draft.LampPick;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.DraftedHomes;
import dapple.testing.DraftedHomes.Drafted;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A draft in which the tube hangs 8 cm lower than it does, with a second one. */
@PagesTest
class InstallPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private DraftedHomes drafted;

    @Autowired
    private Drafts drafts;

    @Autowired
    private Rigs rigs;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private SpeciesFacts skink;
    private Home home;
    private DraftPlace place;
    private LampFacts free;
    private long draftId;

    @BeforeEach
    void furnish() {
        Drafted at = drafted.lit();
        site = at.site();
        lead = at.lead();
        skink = at.skink();
        home = at.home();
        place = at.place();
        free = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        draftId = drafts.make(place, "Plan A", with(new LampPick.Stock(free.id())), lead.personId());
    }

    @Test
    void whatIsToBeDoneStandsInWords() throws Exception {
        see(allOf(
                containsString("Hang " + free.tag()),
                containsString("0.35\u00a0m above P1"),
                containsString("otherwise"),
                containsString("0.60\u00a0m above the floor")));
    }

    @Test
    void theCautionsStandAtTheButton() throws Exception {
        see(allOf(
                containsString("data-caution=\"MAINS\""),
                containsString("data-caution=\"HEAT\""),
                containsString("data-caution=\"ULTRAVIOLET\""),
                containsString("Predicted is not measured")));
    }

    @Test
    void whatIsDoneIsRecorded() throws Exception {
        install(form()).andExpect(redirectedUrl("/enclosures/" + home.enclosureId() + "/rig?changed"));
        assertThat(rig().fittings()).hasSize(2);
    }

    @Test
    void theLampsCountAsNewUntilTheyAreRead() throws Exception {
        install(form());
        pages.perform(get("/enclosures/" + home.enclosureId() + "/lamps").with(collection.as(lead)))
                .andExpect(content().string(containsString("commissioning")));
    }

    @Test
    void theSameFormTwiceIsOneChange() throws Exception {
        Form form = form();
        install(form);
        install(form).andExpect(status().isFound());
        assertThat(rigs.changeCount(site.id(), home.enclosureId())).isEqualTo(2);
    }

    @Test
    void aFormFromAnOlderRigIsRefused() throws Exception {
        Form old = form();
        long other = drafts.make(place, "Plan B", DraftRig.empty(), lead.personId());
        install(other, form());
        install(old).andExpect(status().isConflict()).andExpect(content().string(containsString("Changed meanwhile")));
    }

    @Test
    void aFormFromAnOlderDraftIsRefused() throws Exception {
        Form old = form();
        drafts.change(place, new DraftSeen(draftId, 0), "Plan A", DraftRig.empty(), lead.personId());
        install(old).andExpect(status().isConflict());
        assertThat(rig().fittings()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "2999-01-01T10:00",
        "yesterday",
        "''",
        "1900-01-01T10:00",
        "2024-02-31T10:00",
    })
    void aTimeThatCannotBeComesBack(String at) throws Exception {
        Form form = form();
        install(draftId, new Form(form.key(), form.seen(), form.version(), at))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("at-wrong")));
        assertThat(rig().fittings()).hasSize(1);
    }

    @Test
    void aTimeBeforeTheLastChangeComesBack() throws Exception {
        Form form = form();
        String before = LocalDateTime.ofInstant(clock.instant().minus(Duration.ofDays(3)), lead.zone())
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
        install(draftId, new Form(form.key(), form.seen(), form.version(), before))
                .andExpect(content().string(containsString("Enter a later time")));
    }

    @Test
    void aLampThatHangsElsewhereIsNamedWithItsPlace() throws Exception {
        Home other = homes.unlit(site, lead, skink);
        homes.light(site, lead, other, free, RiggedHomes.over());
        see(allOf(containsString(free.tag() + " hangs in "), not(containsString("name=\"at\""))));
    }

    @Test
    void aLampThatHangsElsewhereByNowIsRefusedWithItsPlace() throws Exception {
        Form form = form();
        Home other = homes.unlit(site, lead, skink);
        homes.light(site, lead, other, free, RiggedHomes.over());
        install(form).andExpect(content().string(containsString("Take it out there first")));
    }

    @Test
    void aLampStillToBeBoughtIsSaidAndNotRecorded() throws Exception {
        draftId = drafts.make(
                place, "Plan B", with(new LampPick.Model(free.model().id())), lead.personId());
        see(allOf(containsString("still to be bought"), not(containsString("name=\"at\""))));
        install(form()).andExpect(status().isConflict());
    }

    @Test
    void whatHangsAlreadyHasNothingToDo() throws Exception {
        draftId = drafts.make(place, "Plan B", DraftRig.of(rig()), lead.personId());
        see(containsString("there is nothing to do"));
    }

    @Test
    void aKeeperDoesNotInstall() throws Exception {
        SignedIn keeper = collection.person(site, Role.KEEPER);
        pages.perform(get(page(draftId)).with(collection.as(keeper))).andExpect(status().isForbidden());
    }

    @Test
    void anotherSiteDoesNotFindIt() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.SUPERVISOR);
        pages.perform(get(page(draftId)).with(collection.as(stranger))).andExpect(status().isNotFound());
    }

    private DraftRig with(LampPick second) {
        DraftRig installed = DraftRig.of(rig());
        DraftLamp first = installed.lamps().get(0);
        return new DraftRig(
                List.of(
                        new DraftLamp(first.fittingId(), first.lamp(), DraftedHomes.hanging(0.6)),
                        DraftedHomes.lamp(second, 0.6)),
                installed.covers(),
                installed.furniture());
    }

    private Rig rig() {
        return rigs.at(site.id(), home.enclosureId(), clock.instant());
    }

    private String page(long draft) {
        return "/enclosures/" + home.enclosureId() + "/desk/" + draft + "/installation";
    }

    private record Form(UUID key, long seen, long version, String at) {}

    private Form form() {
        return new Form(
                UUID.randomUUID(),
                rigs.lastRecorded(site.id(), home.enclosureId()),
                drafts.get(place, draftId).version(),
                LocalDateTime.ofInstant(clock.instant(), lead.zone())
                        .truncatedTo(ChronoUnit.MINUTES)
                        .toString());
    }

    private ResultActions install(Form form) throws Exception {
        return install(draftId, form);
    }

    private ResultActions install(long draft, Form form) throws Exception {
        MockHttpServletRequestBuilder request = post(page(draft))
                .param("key", form.key().toString())
                .param("seen", String.valueOf(form.seen()))
                .param("version", String.valueOf(form.version()))
                .param("at", form.at())
                .param("note", "as drafted");
        return pages.perform(request.with(csrf()).with(collection.as(lead)));
    }

    private void see(Matcher<String> what) throws Exception {
        pages.perform(get(page(draftId)).with(collection.as(lead)))
                .andExpect(status().isOk())
                .andExpect(content().string(what));
    }
}
