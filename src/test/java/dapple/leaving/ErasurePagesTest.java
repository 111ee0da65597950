package dapple.leaving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.people.People;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

@PagesTest
class ErasurePagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private People people;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn administrator;
    private SignedIn keeper;
    private Asking asking;
    private String page = "";

    @BeforeEach
    void hire() {
        site = collection.site();
        administrator = collection.person(site, Role.ADMINISTRATOR);
        keeper = collection.person(site, Role.KEEPER);
        asking = new Asking(pages, collection.as(administrator));
        page = "/people/" + keeper.personId() + "/erasure";
    }

    @Test
    void thePageSaysWhatGoesWhatStaysAndThatBackupsHoldIt() throws Exception {
        leave();
        asking.see(page)
                .andExpect(content().string(containsString("What goes, for good")))
                .andExpect(content().string(containsString("Backups, year’s records and lists that were made before")))
                .andExpect(content().string(containsString("for your local law to say")))
                .andExpect(content().string(containsString("24 months after somebody has left")))
                .andExpect(content().string(containsString("Erase the name of " + keeper.fullName())));
    }

    @Test
    void whoHasNotLeftIsNotOfferedForErasure() throws Exception {
        asking.see(page)
                .andExpect(content().string(containsString("The person has not left")))
                .andExpect(content().string(not(containsString("name=\"version\""))));
        asking.send(page, Map.of("version", version())).andExpect(status().isConflict());
    }

    @Test
    void whoHasLeftIsErasedOnce() throws Exception {
        leave();
        String version = version();
        asking.send(page, Map.of("version", version)).andExpect(redirectedUrl("/people/" + keeper.personId()));
        asking.send(page, Map.of("version", version)).andExpect(status().isConflict());
        asking.see("/people/" + keeper.personId())
                .andExpect(content().string(containsString("Former keeper " + keeper.personId())))
                .andExpect(content().string(containsString("name erased")))
                .andExpect(content().string(not(containsString("/reactivation"))))
                .andExpect(content().string(not(containsString(keeper.signInName()))));
        asking.see("/people/" + keeper.personId() + "/history")
                .andExpect(content().string(not(containsString(keeper.fullName()))));
    }

    @Test
    void aStalePageErasesNobody() throws Exception {
        leave();
        String version = version();
        people.reactivate(site.id(), keeper.personId());
        leave();
        asking.send(page, Map.of("version", version))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("Nothing was erased")));
        assertThat(people.get(site.id(), keeper.personId()).isErased()).isFalse();
    }

    @Test
    void aPageWithoutAVersionErasesNobody() throws Exception {
        leave();
        asking.send(page, Map.of()).andExpect(status().isConflict());
        assertThat(people.get(site.id(), keeper.personId()).isErased()).isFalse();
    }

    @Test
    void nobodyErasesThemselves() throws Exception {
        String mine = "/people/" + administrator.personId() + "/erasure";
        asking.see(mine).andExpect(content().string(containsString("Nobody erases themselves")));
        asking.send(mine, Map.of("version", "0")).andExpect(status().isConflict());
    }

    @Test
    void anotherSitesPersonIsNotFound() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.KEEPER);
        asking.see("/people/" + stranger.personId() + "/erasure").andExpect(status().isNotFound());
        asking.see("/people/" + stranger.personId() + "/kept.json").andExpect(status().isNotFound());
    }

    @Test
    void whoIsErasedSignsInByNeitherName() throws Exception {
        leave();
        asking.send(page, Map.of("version", version()));
        for (String name : new String[] {keeper.signInName(), "former keeper " + keeper.personId()}) {
            asking.send("/sign-in", Map.of("signInName", name, "password", collection.password()))
                    .andExpect(redirectedUrl("/sign-in?again"));
        }
    }

    @Test
    void allThatIsKeptIsHandedOutWithoutPasswords() throws Exception {
        long enclosure = collection.emptyEnclosure(site);
        String reason = "rest, as " + keeper.fullName() + " said";
        PlannedOffTime off = new PlannedOffTime(enclosure, clock.instant(), Optional.empty(), reason);
        enclosures.planOff(site.id(), off, keeper.personId());
        asking.see("/people/" + keeper.personId() + "/kept.json")
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Disposition", containsString("attachment")))
                .andExpect(content().string(containsString("\"sign_in_name\":\"" + keeper.signInName() + "\"")))
                .andExpect(content().string(containsString("\"password_hash\":\"kept, not shown\"")))
                .andExpect(content().string(containsString("\"planned_off.recorded_by\":[{")))
                .andExpect(content().string(containsString("{\"in\":\"planned_off.reason\",\"text\":\"" + reason)));
    }

    private void leave() {
        people.deactivate(site.id(), keeper.personId());
    }

    private String version() {
        return String.valueOf(people.get(site.id(), keeper.personId()).version());
    }
}
