package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.testing.PagesTest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.util.AntPathMatcher;
import org.springframework.web.servlet.resource.ResourceUrlProvider;

@PagesTest
class AssetFilesTest {
    private static final String A_YEAR = "max-age=31536000";

    @Autowired
    private MockMvc pages;

    @Autowired
    private ResourceUrlProvider named;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"(/css/base-[0-9a-f]{32}[.]css)\"",
                "\"(/js/pad-[0-9a-f]{32}[.]js)\"",
                "\"(/icon/dapple-[0-9a-f]{32}[.]svg)\"",
                "\"(/webjars/htmx.org/[^\"]*-[0-9a-f]{32}[.]js)\""
            })
    void aFileWithItsContentInItsNameIsKeptForAYear(String name) throws Exception {
        String page = body("/sign-in");
        Matcher found = Pattern.compile(name).matcher(page);
        assertThat(found.find()).as(page).isTrue();
        pages.perform(get(found.group(1)))
                .andExpect(status().isOk())
                .andExpect(header().string("Cache-Control", A_YEAR));
    }

    @Test
    void fontsAreNamedSoToo() throws Exception {
        assertThat(body("/css/base.css")).containsPattern("font/source-sans-3-latin-wght-normal-[0-9a-f]{32}[.]woff2");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/sw.js", "/manifest.webmanifest"})
    void aFileOfOneNameIsAskedForAnew(String file) throws Exception {
        pages.perform(get(file)).andExpect(status().isOk()).andExpect(header().string("Cache-Control", "no-cache"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/css/none.css", "/js/", "/webjars/none.js", "/icon/../sw.js"})
    void nothingElseIsThere(String file) throws Exception {
        pages.perform(get(file)).andExpect(status().is4xxClientError());
    }

    /** Each link of a page is held against the names of files; one that could be a file is looked for each time. */
    @ParameterizedTest
    @ValueSource(strings = {"/", "/review", "/enclosures/27", "/animals/28/sheet"})
    void noPageIsTakenForAFile(String page) {
        assertThat(named.getHandlerMap().keySet())
                .isNotEmpty()
                .noneMatch(pattern -> new AntPathMatcher().match(pattern, page));
    }

    private String body(String address) throws Exception {
        return pages.perform(get(address))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
