package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class PeoplePagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private People people;

    @Autowired
    private MockMvc pages;

    private SignedIn administrator;
    private SignedIn keeper;

    @BeforeEach
    void hire() {
        SiteFacts site = collection.site();
        administrator = collection.person(site, Role.ADMINISTRATOR);
        keeper = collection.person(site, Role.KEEPER);
    }

    @Test
    void aStaleFormComesBackWithBothStates() throws Exception {
        long version = people.get(keeper.siteId(), keeper.personId()).version();
        change(version, "Name of the first", "SUPERVISOR").andExpect(redirectedUrl("/people"));
        change(version, "Name of the second", "VET")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("Name of the first")))
                .andExpect(content().string(containsString("value=\"Name of the second\"")));
    }

    @Test
    void aStaleFormCanBeSavedOverTheOther() throws Exception {
        long version = people.get(keeper.siteId(), keeper.personId()).version();
        change(version, "Name of the first", "SUPERVISOR");
        long newer = people.get(keeper.siteId(), keeper.personId()).version();
        change(newer, "Name of the second", "VET").andExpect(redirectedUrl("/people"));
    }

    @Test
    void rolesAloneMakeAnOlderFormStale() throws Exception {
        PersonFacts before = people.get(keeper.siteId(), keeper.personId());
        change(before.version(), before.name(), "SUPERVISOR").andExpect(redirectedUrl("/people"));
        change(before.version(), before.name(), "VET")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("supervisor")));
        assertThat(people.get(keeper.siteId(), keeper.personId()).roles()).containsExactly(Role.SUPERVISOR);
    }

    @Test
    void aLastDayAloneMakesAnOlderFormStale() {
        PersonFacts before = people.get(keeper.siteId(), keeper.personId());
        LocalDate day = LocalDate.of(2099, 1, 31);
        people.change(
                keeper.siteId(),
                before.id(),
                before.version(),
                new PersonChange(before.name(), roles(before), Optional.of(day)));
        assertThat(people.get(keeper.siteId(), before.id()).version()).isGreaterThan(before.version());
    }

    private static Set<Role> roles(PersonFacts person) {
        return Set.copyOf(person.roles());
    }

    @Test
    void aPersonWithoutARoleComesBackWithAMessage() throws Exception {
        pages.perform(post("/people/{id}", keeper.personId())
                        .param("version", "0")
                        .param("name", "A Name")
                        .with(csrf())
                        .with(collection.as(administrator)))
                .andExpect(content().string(containsString("Choose at least one.")));
    }

    @Test
    void nobodyTakesTheAdministratorRoleFromThemselves() throws Exception {
        pages.perform(post("/people/{id}", administrator.personId())
                        .param("version", "0")
                        .param("name", "A Name")
                        .param("roles", "KEEPER")
                        .with(csrf())
                        .with(collection.as(administrator)))
                .andExpect(content().string(containsString("You cannot take the administrator role from yourself")));
    }

    @Test
    void nobodyDeactivatesTheirOwnAccount() throws Exception {
        pages.perform(post("/people/{id}/deactivation", administrator.personId())
                        .with(csrf())
                        .with(collection.as(administrator)))
                .andExpect(status().isConflict());
    }

    @Test
    void aResetCodeIsShownOnce() throws Exception {
        pages.perform(post("/people/{id}/reset-code", keeper.personId())
                        .with(csrf())
                        .with(collection.as(administrator)))
                .andExpect(flash().attributeExists("resetCode"));
    }

    @Test
    void theListSaysWhoseAccessEnds() throws Exception {
        pages.perform(get("/people").with(collection.as(administrator)))
                .andExpect(content().string(containsString("access has a last day.")));
        PersonChange past =
                new PersonChange("Past One", Set.of(Role.KEEPER), Optional.of(LocalDate.parse("2020-01-31")));
        people.change(keeper.siteId(), keeper.personId(), 0, past);
        pages.perform(get("/people").with(collection.as(administrator)))
                .andExpect(content().string(containsString("ended, last day 31 Jan 2020")));
    }

    @Test
    void aShortPasswordComesBackWithAMessageAndIsNotShown() throws Exception {
        pages.perform(post("/people/new")
                        .param("signInName", "new.person")
                        .param("name", "New Person")
                        .param("password", "too short")
                        .param("roles", "KEEPER")
                        .with(csrf())
                        .with(collection.as(administrator)))
                .andExpect(content().string(containsString("Enter 10 to 200 characters")))
                .andExpect(content().string(containsString("value=\"New Person\"")))
                .andExpect(content().string(not(containsString("too short"))));
    }

    @Test
    void everyPageAllowsNothingFromOutside() throws Exception {
        pages.perform(get("/sign-in"))
                .andExpect(header().string("Content-Security-Policy", SecurityRules.CONTENT_SECURITY_POLICY))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"));
    }

    @Test
    void theSignInPageShowsNoAccountsOutsideTheDemo() throws Exception {
        pages.perform(get("/sign-in")).andExpect(content().string(not(containsString("dapple</code>"))));
    }

    private ResultActions change(long version, String name, String role) throws Exception {
        return pages.perform(post("/people/{id}", keeper.personId())
                .param("version", String.valueOf(version))
                .param("name", name)
                .param("roles", role)
                .with(csrf())
                .with(collection.as(administrator)));
    }
}
