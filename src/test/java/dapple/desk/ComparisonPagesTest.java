package dapple.desk;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.people.SignedIn;
import dapple.testing.DraftedHomes;
import dapple.testing.DraftedHomes.Drafted;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.util.List;
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
    private DraftedHomes drafted;

    @Autowired
    private MockMvc pages;

    private SignedIn lead;
    private Home home;
    private long nearer;
    private long empty;

    @BeforeEach
    void furnish() {
        Drafted at = drafted.lit();
        lead = at.lead();
        home = at.home();
        DraftRig installed = at.installed();
        DraftLamp tube = installed.lamps().get(0);
        DraftLamp lower = new DraftLamp(tube.fittingId(), tube.lamp(), DraftedHomes.hanging(0.4));
        nearer = at.draft("Nearer", new DraftRig(List.of(lower), List.of(), installed.furniture()));
        empty = at.draft("Nothing", DraftRig.empty());
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
    void theChecksOfTheTradeAreCountedForEach() throws Exception {
        see(
                "?rig=installed&rig=" + nearer,
                allOf(
                        containsString("of 15 checks do not hold"),
                        containsString("Nothing in reach is over the ceiling")));
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
