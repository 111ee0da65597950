package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class HistoryPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private People people;

    @Autowired
    private JdbcClient database;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn administrator;
    private SignedIn keeper;
    private Home home;
    private EnclosureFacts enclosure;

    @BeforeEach
    void furnish() {
        site = collection.site();
        administrator = collection.person(site, Role.ADMINISTRATOR);
        keeper = collection.person(site, Role.KEEPER);
        home = collection.home(site, administrator, collection.species(site, "Pogona vitticeps"));
        enclosure = enclosures.get(site.id(), home.enclosureId());
    }

    @Test
    void saysWhoChangedWhichFieldsOfARoom() throws Exception {
        send("/rooms/" + enclosure.roomId(), "version", "0", "name", "Warm room", "order", "3");
        assertThat(text("/rooms/" + enclosure.roomId() + "/history"))
                .contains(administrator.fullName() + " changed Name from " + enclosure.room()
                        + " to Warm room Place in the walk from ");
    }

    @Test
    void namesAnAuthorWhoIsDeactivatedByNow() throws Exception {
        send("/rooms/" + enclosure.roomId(), "version", "0", "name", "Warm room", "order", "3");
        SignedIn inspector = collection.person(site, Role.INSPECTOR);
        people.deactivate(site.id(), administrator.personId());
        pages.perform(get("/rooms/" + enclosure.roomId() + "/history").with(collection.as(inspector)))
                .andExpect(content().string(containsString(administrator.fullName())));
    }

    @Test
    void whatTheProgramDidItselfIsSaidToBeItsOwn() throws Exception {
        assertThat(text("/rooms/" + enclosure.roomId() + "/history"))
                .contains("the program entered Name " + enclosure.room());
    }

    @Test
    void showsNamesInsteadOfIdsAndUnchangedFieldsNotAtAll() throws Exception {
        long other = enclosures.addRoom(site.id(), "Quarantine", 5);
        send(
                "/enclosures/" + enclosure.id() + "/edit",
                "version",
                "0",
                "roomId",
                String.valueOf(other),
                "code",
                enclosure.code(),
                "order",
                "1",
                "widthMetres",
                "1.2",
                "depthMetres",
                "0.6",
                "heightMetres",
                "0.5");
        String newest = newest("/enclosures/" + enclosure.id() + "/history");
        assertThat(newest)
                .contains("Room from " + enclosure.room() + " to Quarantine", "Width, m 1.2", "Height, m 0.5")
                .doesNotContain("Code");
    }

    @Test
    void saysWhatIsNoLongerThere() throws Exception {
        String point =
                "/enclosures/" + enclosure.id() + "/points/" + home.basking().id();
        send(point + "/retirement");
        send(point + "/return");
        assertThat(newest(point + "/history")).containsPattern("Retired since from .* to nothing");
    }

    @Test
    void saysTheKindOfAPointInWords() throws Exception {
        String point =
                "/enclosures/" + enclosure.id() + "/points/" + home.basking().id();
        assertThat(newest(point + "/history")).contains("Kind basking");
    }

    @Test
    void tellsTheRolesThatAPersonGotAndLost() throws Exception {
        send(person(), "version", "0", "name", keeper.fullName(), "roles", "VET", "endsOn", "2027-03-31");
        assertThat(newest(person() + "/history"))
                .contains("Role from keeper to nothing", "Role vet", "Last day of access 31 Mar 2027")
                .doesNotContain("Sign-in name", "Account since");
    }

    @Test
    void tellsALastDayThatWasChangedAlone() throws Exception {
        send(person(), "version", "0", "name", keeper.fullName(), "roles", "KEEPER", "endsOn", "2027-03-31");
        assertThat(newest(person() + "/history")).contains("Last day of access 31 Mar 2027");
    }

    @Test
    void neverTellsASecret() throws Exception {
        people.resetPassword(keeper.signInName(), people.allowReset(site.id(), keeper.personId()), "a new one here");
        people.allowReset(site.id(), keeper.personId());
        List<String> secrets = database.sql(
                        "select password_hash from person where id = ? union select reset_code_hash from person where id = ?")
                .params(keeper.personId(), keeper.personId())
                .query(String.class)
                .list();
        String page = page(person() + "/history").andReturn().getResponse().getContentAsString();
        assertThat(secrets).hasSize(2).noneMatch(page::contains);
        assertThat(text(person() + "/history").toLowerCase(Locale.ROOT))
                .doesNotContain("hash", "password", "reset", "expires");
    }

    @Test
    void showsFiftyChangesOnAPage() throws Exception {
        String room = "/rooms/" + enclosure.roomId();
        for (int change = 0; change < 51; change++) {
            send(room, "version", String.valueOf(change), "name", "Name " + change, "order", "1");
        }
        assertThat(text(room + "/history"))
                .contains("to Name 50", "from Name 0 to Name 1 ")
                .doesNotContain("to Name 0 ");
        assertThat(text(room + "/history?page=2"))
                .contains("from " + enclosure.room() + " to Name 0", "entered Name " + enclosure.room())
                .doesNotContain("Older");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "0", "2", "2147483647"})
    void aPageThatIsNotThereIsEmptyOrTheFirst(String number) throws Exception {
        page("/rooms/" + enclosure.roomId() + "/history?page=" + number).andExpect(status().isOk());
    }

    @Test
    void aPointIsSoughtInItsOwnEnclosure() throws Exception {
        long other = enclosures.add(site.id(), enclosure.roomId(), "X1", 1, Optional.empty());
        page("/enclosures/" + other + "/points/" + home.basking().id() + "/history")
                .andExpect(status().isNotFound());
    }

    @Test
    void thePageOfAThingLinksItsHistory() throws Exception {
        page(person()).andExpect(content().string(containsString(person() + "/history")));
        page("/rooms/" + enclosure.roomId()).andExpect(content().string(containsString("/history")));
        page("/enclosures/" + enclosure.id()).andExpect(content().string(containsString("/history")));
    }

    @Test
    void whoMayNotAuditSeesNoLink() throws Exception {
        pages.perform(get("/enclosures/" + enclosure.id()).with(collection.as(keeper)))
                .andExpect(content().string(not(containsString("/history"))));
    }

    private String person() {
        return "/people/" + keeper.personId();
    }

    private ResultActions page(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(administrator)));
    }

    /** The words of a page in a row. */
    private String text(String path) throws Exception {
        return words(page(path).andReturn().getResponse().getContentAsString());
    }

    /** The words of the first row of a history. */
    private String newest(String path) throws Exception {
        String page = page(path).andReturn().getResponse().getContentAsString();
        return words(page.substring(page.indexOf("<tbody>"), page.indexOf("</tr>", page.indexOf("<tbody>"))));
    }

    private static String words(String html) {
        return Pattern.compile("(?s)<[^>]*>|\\s+").matcher(html).replaceAll(" ").replaceAll(" +", " ");
    }

    private void send(String path, String... namesAndValues) throws Exception {
        var request = post(path).with(csrf()).with(collection.as(administrator));
        for (int at = 0; at < namesAndValues.length; at += 2) {
            request.param(namesAndValues[at], namesAndValues[at + 1]);
        }
        pages.perform(request).andExpect(status().is3xxRedirection());
    }
}
