package dapple.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.photo.Camera;
import dapple.site.Given;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.nio.charset.StandardCharsets;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import tools.jackson.databind.json.JsonMapper;

/** Photos that phones send once they have a network. */
@PagesTest
class PhotoEntriesPagesTest {
    private static final int OVER_EIGHT_MEGABYTES = 8_000_001;

    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private JsonMapper json;

    @Autowired
    private Clock clock;

    private final Map<String, Object> entry = new LinkedHashMap<>();
    private byte[] file = Camera.jpegWithExif(64, 48, 1);
    private SiteFacts site;
    private SignedIn keeper;
    private UUID key;

    @BeforeEach
    void takeAPhoto() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        key = UUID.randomUUID();
        Instant now = now();
        entry.put("key", key);
        entry.put("visitKey", UUID.randomUUID());
        entry.put("personId", keeper.personId());
        entry.put("enclosureId", collection.emptyEnclosure(site));
        entry.put("takenAt", now.minusSeconds(3600).toString());
        entry.put("sentAt", now.toString());
    }

    /** Nothing was sent of the visit before. */
    @Test
    void aPhotoBeginsItsVisit() throws Exception {
        send().andExpect(status().isOk()).andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(database.queryForList(
                        "select v.entry_key from visit_photo p join visit v on v.id = p.visit_id where p.entry_key = ?",
                        UUID.class,
                        key))
                .containsExactly((UUID) entry.get("visitKey"));
    }

    @Test
    void sentTwiceItIsStoredOnce() throws Exception {
        send();
        send().andExpect(jsonPath("$.kind", is("STORED")));
        assertThat(stored()).isEqualTo(1);
    }

    /** The answer to the sixth was lost: it is no seventh. */
    @Test
    void theSixthSentTwiceIsStored() throws Exception {
        takeFive();
        send();
        send().andExpect(jsonPath("$.kind", is("STORED")));
    }

    @Test
    void theSeventhIsRefusedInWords() throws Exception {
        takeFive();
        send();
        another();
        send().andExpect(jsonPath("$.kind", is("REFUSED")))
                .andExpect(jsonPath("$.words", containsString("This visit has its 6 photos")));
        assertThat(stored()).isZero();
    }

    @Test
    void itKeepsTheTimeAtWhichItWasTaken() throws Exception {
        send();
        Timestamp taken =
                database.queryForObject("select taken_at from visit_photo where entry_key = ?", Timestamp.class, key);
        assertThat(Duration.between(Given.of(taken).toInstant(), now()))
                .isBetween(Duration.ofSeconds(3599), Duration.ofSeconds(3660));
    }

    @Test
    void whatTheCameraSaysOfThePlaceIsNotKept() throws Exception {
        send();
        List<byte[]> kept = database.queryForList(
                "select i.content from visit_picture i join visit_photo p on p.id = i.photo_id where p.entry_key = ?",
                byte[].class,
                key);
        assertThat(kept)
                .hasSize(2)
                .allSatisfy(picture -> assertThat(new String(picture, StandardCharsets.ISO_8859_1))
                        .doesNotContain("Exif")
                        .doesNotContain(Camera.PLACE));
    }

    @Test
    void whatIsNoPictureIsRefusedInWords() throws Exception {
        file = "no picture".getBytes(StandardCharsets.UTF_8);
        send().andExpect(jsonPath("$.kind", is("REFUSED")))
                .andExpect(jsonPath("$.words", containsString("no picture that can be read")));
        assertThat(stored()).isZero();
    }

    @Test
    void whatIsTooLargeIsRefusedInWords() throws Exception {
        file = new byte[OVER_EIGHT_MEGABYTES];
        send().andExpect(jsonPath("$.kind", is("REFUSED")))
                .andExpect(jsonPath("$.words", containsString("larger than 8 MB")));
    }

    @Test
    void withoutAPictureItIsRefusedInWords() throws Exception {
        pages.perform(withoutPicture().with(collection.as(keeper)).with(csrf()))
                .andExpect(jsonPath("$.kind", is("REFUSED")));
    }

    @Test
    void anotherSitesEnclosureIsRefused() throws Exception {
        entry.put("enclosureId", collection.emptyEnclosure(collection.site()));
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
        assertThat(stored()).isZero();
    }

    @Test
    void anotherSitesVisitIsRefused() throws Exception {
        send();
        SiteFacts other = collection.site();
        keeper = collection.person(other, Role.KEEPER);
        entry.put("personId", keeper.personId());
        entry.put("enclosureId", collection.emptyEnclosure(other));
        another();
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
        assertThat(stored()).isZero();
    }

    /** It would be said to be stored where it is not. */
    @Test
    void theKeyOfAnotherVisitsPhotoIsRefused() throws Exception {
        send();
        entry.put("visitKey", UUID.randomUUID());
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
    }

    @Test
    void whatSomebodyElseTookIsNotStoredUnderThisName() throws Exception {
        entry.put("personId", collection.person(site, Role.KEEPER).personId());
        send().andExpect(jsonPath("$.kind", is("REFUSED"))).andExpect(jsonPath("$.words", containsString("signed in")));
        assertThat(stored()).isZero();
    }

    @Test
    void whatWaitedForMonthsIsNoPhotoOfAWalk() throws Exception {
        entry.put("takenAt", now().minus(Duration.ofDays(91)).toString());
        send().andExpect(jsonPath("$.kind", is("REFUSED")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"key", "visitKey", "personId", "enclosureId", "takenAt", "sentAt"})
    void itMustSayWhereItIsFrom(String missing) throws Exception {
        entry.remove(missing);
        send().andExpect(status().isUnprocessableContent());
    }

    @Test
    void whatCannotBeReadIsABadRequest() throws Exception {
        entry.put("takenAt", "yesterday");
        send().andExpect(status().isBadRequest());
    }

    @Test
    void whoLogsNoReadingsMayNotSendAny() throws Exception {
        SignedIn inspector = collection.person(site, Role.INSPECTOR);
        pages.perform(posted().with(collection.as(inspector)).with(csrf())).andExpect(status().isForbidden());
    }

    @Test
    void withoutTokenNothingIsStored() throws Exception {
        pages.perform(posted().with(collection.as(keeper))).andExpect(status().isForbidden());
        assertThat(stored()).isZero();
    }

    @Test
    void whoIsSignedOutIsSentToSignIn() throws Exception {
        pages.perform(posted().with(csrf())).andExpect(redirectedUrl("/sign-in"));
        assertThat(stored()).isZero();
    }

    private void takeFive() throws Exception {
        for (int at = 0; at < 5; at++) {
            send();
            another();
        }
    }

    private void another() {
        key = UUID.randomUUID();
        entry.put("key", key);
    }

    private ResultActions send() throws Exception {
        return pages.perform(posted().with(collection.as(keeper)).with(csrf()));
    }

    private MockMultipartHttpServletRequestBuilder posted() {
        return withoutPicture().file(new MockMultipartFile("photo", "photo.jpg", "image/jpeg", file));
    }

    private MockMultipartHttpServletRequestBuilder withoutPicture() {
        return multipart("/walk/photos")
                .file(new MockMultipartFile("entry", "", "application/json", json.writeValueAsBytes(entry)));
    }

    private int stored() {
        return database.queryForList("select id from visit_photo where entry_key = ?", Long.class, key)
                .size();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }
}
