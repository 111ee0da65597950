package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.KeyOwner;
import dapple.people.Keys;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.TestCollection;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A keeper's program with a key of its own, which posts documents. */
abstract class ProgramPages {
    @Autowired
    MockMvc pages;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Keys keys;

    String key = "";

    @BeforeEach
    void makeKey() {
        SiteFacts site = collection.site();
        SignedIn keeper = collection.person(site, Role.KEEPER);
        key = keys.make(new KeyOwner(site.id(), keeper.personId()), "for a test");
    }

    final ResultActions send(String path, String body) throws Exception {
        return pages.perform(post(path)
                .header(HttpHeaders.AUTHORIZATION, "Bearer " + key)
                .contentType(MediaType.APPLICATION_JSON)
                .content(body));
    }

    /** The answer to a document that must be answered. */
    final JsonNode answer(String path, String body) throws Exception {
        String answer = send(path, body)
                .andExpect(status().isOk())
                .andExpect(content().contentType(MediaType.APPLICATION_JSON))
                .andExpect(header().doesNotExist(HttpHeaders.SET_COOKIE))
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
        assertThat(answer).doesNotContain("NaN", "Infinity");
        return new JsonMapper().readTree(answer);
    }
}
