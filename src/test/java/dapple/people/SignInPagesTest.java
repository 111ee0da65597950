package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class SignInPagesTest {
    private static final int ALLOWED_ATTEMPTS = 10;

    @Autowired
    private TestCollection collection;

    @Autowired
    private People people;

    @Autowired
    private FindByIndexNameSessionRepository<? extends Session> sessions;

    @Autowired
    private MockMvc pages;

    private SignedIn keeper;

    @BeforeEach
    void hire() {
        keeper = collection.person(collection.site(), Role.KEEPER);
    }

    @Test
    void theRightPasswordLeadsToToday() throws Exception {
        signIn(collection.password()).andExpect(redirectedUrl("/"));
    }

    @Test
    void aWrongPasswordLeadsBack() throws Exception {
        signIn("wrong").andExpect(redirectedUrl("/sign-in?again"));
    }

    @Test
    void guessingIsSlowedDown() throws Exception {
        for (int attempt = 1; attempt <= ALLOWED_ATTEMPTS; attempt++) {
            signIn("wrong");
        }
        signIn(collection.password()).andExpect(redirectedUrl("/sign-in?wait"));
    }

    @Test
    void aResetCodeSetsANewPassword() throws Exception {
        String code = people.allowReset(keeper.siteId(), keeper.personId());
        reset(code).andExpect(redirectedUrl("/sign-in?reset"));
        signIn("a brand new password").andExpect(redirectedUrl("/"));
    }

    @Test
    void aNewPasswordEndsWhatIsSignedInElsewhere() throws Exception {
        String elsewhere = sessionOf(keeper.signInName());
        pages.perform(post("/account")
                        .param("oldPassword", collection.password())
                        .param("password", "a brand new password")
                        .with(collection.as(keeper))
                        .with(csrf()))
                .andExpect(redirectedUrl("/account?changed"));
        assertThat(sessions.findById(elsewhere)).isNull();
    }

    @Test
    void aPasswordThatWasNotChangedEndsNothing() throws Exception {
        String elsewhere = sessionOf(keeper.signInName());
        pages.perform(post("/account")
                .param("oldPassword", "wrong")
                .param("password", "a brand new password")
                .with(collection.as(keeper))
                .with(csrf()));
        assertThat(sessions.findById(elsewhere)).isNotNull();
    }

    @Test
    void aResetPasswordEndsWhatIsSignedInAnywhere() throws Exception {
        String elsewhere = sessionOf(keeper.signInName());
        String another =
                sessionOf(collection.person(collection.site(), Role.KEEPER).signInName());
        reset(people.allowReset(keeper.siteId(), keeper.personId()));
        assertThat(sessions.findById(elsewhere)).isNull();
        assertThat(sessions.findById(another)).isNotNull();
    }

    /** Stored as a sign-in stores it. */
    private String sessionOf(String signInName) {
        return stored(sessions, signInName);
    }

    private static <S extends Session> String stored(FindByIndexNameSessionRepository<S> sessions, String signInName) {
        S session = sessions.createSession();
        session.setAttribute(FindByIndexNameSessionRepository.PRINCIPAL_NAME_INDEX_NAME, signInName);
        sessions.save(session);
        return session.getId();
    }

    @Test
    void aWrongResetCodeComesBackWithAMessage() throws Exception {
        reset("AAAA-BBBB-CCCC")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Name and code do not match")));
    }

    @Test
    void theFirstRunPageIsGoneOnceBegun() throws Exception {
        pages.perform(get("/first-run")).andExpect(status().isNotFound());
    }

    @Test
    void theColoursOfADeviceCanBeChosenSignedOut() throws Exception {
        pages.perform(post("/scheme").param("scheme", "night").with(csrf())).andExpect(status().isSeeOther());
    }

    @Test
    void theHealthEndpointIsOpen() throws Exception {
        pages.perform(get("/actuator/health")).andExpect(content().string(containsString("UP")));
    }

    private ResultActions signIn(String password) throws Exception {
        return pages.perform(post("/sign-in")
                .param("signInName", keeper.signInName())
                .param("password", password)
                .with(request -> from("192.0.2." + keeper.personId() % 250, request))
                .with(csrf()));
    }

    private ResultActions reset(String code) throws Exception {
        return pages.perform(post("/reset")
                .param("signInName", keeper.signInName())
                .param("code", code)
                .param("password", "a brand new password")
                .with(request -> from("198.51.100." + keeper.personId() % 250, request))
                .with(csrf()));
    }

    private static MockHttpServletRequest from(String address, MockHttpServletRequest request) {
        request.setRemoteAddr(address);
        return request;
    }
}
