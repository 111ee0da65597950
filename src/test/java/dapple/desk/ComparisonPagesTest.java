package dapple.desk;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.draft.DraftLamp;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.Drafts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.Hanging;
import dapple.rig.RigExamples;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** What hangs beside a draft in which the tube hangs much nearer. */
@PagesTest
class ComparisonPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private Drafts drafts;

    @Autowired
    private Rigs rigs;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SignedIn lead;
    private Home home;
    private long nearer;
    private long empty;

    @BeforeEach
    void furnish() {
        SiteFacts site = collection.site();
        lead = collection.person(site, Role.SUPERVISOR);
        SpeciesFacts skink = collection.species(site, lead, "Tiliqua scincoides", new UvZone(2, LightMethod.SUNBEAM));
        home = homes.lit(site, lead, skink);
        DraftPlace place = new DraftPlace(site.id(), home.enclosureId());
        DraftRig installed = DraftRig.of(rigs.at(site.id(), home.enclosureId(), clock.instant()));
        DraftLamp tube = installed.lamps().get(0);
        Hanging lower = new Hanging(
                "nearer", Optional.of(RigExamples.above(0.6, 0.3, 0.4)), Optional.empty(), Optional.empty());
        nearer = drafts.make(
                place,
                "Nearer",
                new DraftRig(
                        List.of(new DraftLamp(tube.fittingId(), tube.lamp(), lower)), List.of(), installed.furniture()),
                lead.personId());
        empty = drafts.make(place, "Nothing", DraftRig.empty(), lead.personId());
    }

    @Test
    void twoStandSideBySideWithTheirDifference() throws Exception {
        see(
                "?rig=installed&rig=" + nearer,
                allOf(
                        containsString("what hangs now"),
                        containsString("Nearer"),
                        containsString("Against the first rig"),
                        containsString(">double<")));
    }

    @Test
    void threeMayStand() throws Exception {
        see("?rig=installed&rig=" + nearer + "&rig=" + empty, containsString("No difference can be drawn"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "?rig=installed", "?rig=installed&rig=installed"})
    void fewerThanTwoAreAskedForAgain(String query) throws Exception {
        see(query, allOf(containsString("Choose two or three rigs"), not(containsString("class=\"drawing\""))));
    }

    @Test
    void whatIsNoDraftIsNotFound() throws Exception {
        ask("?rig=installed&rig=x1", 404);
    }

    @Test
    void aDraftThatIsNotThereIsNotFound() throws Exception {
        ask("?rig=installed&rig=999999", 404);
    }

    private void see(String query, Matcher<String> what) throws Exception {
        pages.perform(get("/enclosures/" + home.enclosureId() + "/desk/comparison" + query)
                        .with(collection.as(lead)))
                .andExpect(status().isOk())
                .andExpect(content().string(what));
    }

    private void ask(String query, int answer) throws Exception {
        pages.perform(get("/enclosures/" + home.enclosureId() + "/desk/comparison" + query)
                        .with(collection.as(lead)))
                .andExpect(status().is(answer));
    }
}
