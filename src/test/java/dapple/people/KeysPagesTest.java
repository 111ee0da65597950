package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.startsWith;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class KeysPagesTest {
    private static final int ATTEMPTS_FROM_AN_ADDRESS = 50;
    private static final AtomicInteger ADDRESS = new AtomicInteger();

    @Autowired
    private TestCollection collection;

    @Autowired
    private People people;

    @Autowired
    private Keys keys;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn keeper;
    private KeyOwner owner;
    private String address = "";

    @BeforeEach
    void hire() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        owner = new KeyOwner(site.id(), keeper.personId());
        address = "203.0.113." + ADDRESS.incrementAndGet();
    }

    @Test
    void aKeyLetsAProgramIn() throws Exception {
        ask("Bearer " + keys.make(owner, "sheet")).andExpect(status().isBadRequest());
    }

    @Test
    void withoutAKeyThereIsAChallenge() throws Exception {
        pages.perform(post("/api/v1/light-field"))
                .andExpect(status().isUnauthorized())
                .andExpect(header().string(HttpHeaders.WWW_AUTHENTICATE, "Bearer"))
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.status").value(401));
    }

    @Test
    void aWrongKeyIsRefused() throws Exception {
        ask("Bearer wrong")
                .andExpect(status().isUnauthorized())
                .andExpect(header().string(HttpHeaders.WWW_AUTHENTICATE, startsWith("Bearer ")));
    }

    @Test
    void thereIsNoKeyOfTheDemoHere() throws Exception {
        ask("Bearer demo").andExpect(status().isUnauthorized());
    }

    @Test
    void aPasswordIsNoKey() throws Exception {
        ask("Basic " + keys.make(owner, "sheet")).andExpect(status().isUnauthorized());
    }

    @Test
    void aRevokedKeyIsRefused() throws Exception {
        String key = keys.make(owner, "sheet");
        pages.perform(post(
                                "/account/keys/{id}/revocation",
                                keys.of(owner).get(0).id())
                        .with(csrf())
                        .with(collection.as(keeper)))
                .andExpect(status().isFound());
        ask("Bearer " + key).andExpect(status().isUnauthorized());
    }

    @Test
    void theKeyOfADeactivatedPersonIsRefused() throws Exception {
        String key = keys.make(owner, "sheet");
        people.deactivate(site.id(), keeper.personId());
        ask("Bearer " + key).andExpect(status().isUnauthorized());
    }

    @Test
    void theKeyOfAPersonWithoutARoleIsRefused() throws Exception {
        String key = keys.make(owner, "sheet");
        long version = people.get(site.id(), keeper.personId()).version();
        people.change(site.id(), keeper.personId(), version, new PersonChange("Name", Set.of(), Optional.empty()));
        ask("Bearer " + key).andExpect(status().isUnauthorized());
    }

    @Test
    void guessingIsSlowedDown() throws Exception {
        for (int attempt = 1; attempt <= ATTEMPTS_FROM_AN_ADDRESS; attempt++) {
            ask("Bearer wrong");
        }
        ask("Bearer " + keys.make(owner, "sheet"))
                .andExpect(status().isTooManyRequests())
                .andExpect(header().exists(HttpHeaders.RETRY_AFTER));
    }

    @Test
    void goodKeysAreNotCountedAsGuesses() throws Exception {
        String key = "Bearer " + keys.make(owner, "sheet");
        for (int request = 1; request <= ATTEMPTS_FROM_AN_ADDRESS + 1; request++) {
            ask(key).andExpect(status().isBadRequest());
        }
    }

    @Test
    void aNewKeyIsShownOnce() throws Exception {
        make("sheet").andExpect(flash().attributeExists("newKey"));
        pages.perform(get("/account/keys").with(csrf()).with(collection.as(keeper)))
                .andExpect(content().string(containsString("sheet")))
                .andExpect(content().string(containsString("never used")));
    }

    @Test
    void aKeyNeedsAName() throws Exception {
        make(" ").andExpect(status().isOk()).andExpect(content().string(containsString("Enter something here.")));
    }

    @Test
    void aPersonHasNotTooManyKeys() throws Exception {
        while (!keys.isFull(owner)) {
            keys.make(owner, "sheet");
        }
        make("one more").andExpect(content().string(containsString("Revoke one first.")));
    }

    @Test
    void theUseOfAKeyIsNoted() throws Exception {
        ask("Bearer " + keys.make(owner, "sheet"));
        List<KeyFacts> own = keys.of(owner);
        assertThat(own.get(0).lastUsed()).isNotNull();
    }

    private ResultActions make(String name) throws Exception {
        return pages.perform(
                post("/account/keys").param("keyName", name).with(csrf()).with(collection.as(keeper)));
    }

    private ResultActions ask(String authorization) throws Exception {
        return pages.perform(post("/api/v1/light-field")
                .header(HttpHeaders.AUTHORIZATION, authorization)
                .contentType(MediaType.APPLICATION_JSON)
                .content("{}")
                .with(request -> {
                    request.setRemoteAddr(address);
                    return request;
                }));
    }
}
