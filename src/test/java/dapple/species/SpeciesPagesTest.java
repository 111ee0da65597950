package dapple.species;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class SpeciesPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    private SignedIn vet;
    private SpeciesFacts species;

    @BeforeEach
    void furnish() {
        SiteFacts site = collection.site();
        vet = collection.person(site, Role.VET);
        species = collection.species(site, "Moloch horridus");
    }

    @Test
    void theLibraryShowsZoneMarkAndNote() throws Exception {
        see("/library?name=vitticeps")
                .andExpect(content().string(containsString("UV zone 3")))
                .andExpect(content().string(containsString(", or 4")))
                .andExpect(content().string(containsString("from memory, unverified")))
                .andExpect(content().string(containsString("one secondary press summary says 4")));
    }

    @Test
    void theLibraryComesByPage() throws Exception {
        see("/library")
                .andExpect(content().string(containsString("234 found")))
                .andExpect(content().string(containsString("Page 1 of 10")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-3", "99"})
    void aPageOutsideTheLibraryIsTheNearest(String page) throws Exception {
        see("/library?page=" + page)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(" of 10")));
    }

    @Test
    void theLibrarySaysWhenItHasNoSuchName() throws Exception {
        see("/library?name=unicorn").andExpect(content().string(containsString("Nothing of this name")));
    }

    @Test
    void aRowOfTheLibraryFillsTheForm() throws Exception {
        see("/targets/new?from=Laudakia stellio")
                .andExpect(content().string(containsString("value=\"Stellagama stellio\"")));
    }

    @Test
    void aNewSpeciesIsListedWithoutATarget() throws Exception {
        send("/targets/new", "0", "Pogona vitticeps", "dragon", false).andExpect(redirectedUrlPattern("/targets/*"));
        see("/targets")
                .andExpect(content().string(containsString("Pogona vitticeps")))
                .andExpect(content().string(containsString("no target")));
    }

    @Test
    void aNameNearTheLibrarysIsAskedAbout() throws Exception {
        send("/targets/new", "0", "Pogona viticeps", "dragon", false)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"scientificName-wrong\"")))
                .andExpect(content().string(containsString("Pogona vitticeps")))
                .andExpect(content().string(containsString("value=\"Pogona viticeps\"")));
    }

    @Test
    void aNameMeantAsTypedIsStored() throws Exception {
        send("/targets/new", "0", "Pogona viticeps", "dragon", true).andExpect(redirectedUrlPattern("/targets/*"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "two\nlines"})
    void aSpeciesWithoutANameComesBack(String name) throws Exception {
        send("/targets/new", "0", name, "dragon", false)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"scientificName-wrong\"")))
                .andExpect(content().string(containsString("value=\"dragon\"")));
    }

    @Test
    void aSpeciesPostedTwiceIsStoredOnce() throws Exception {
        send("/targets/new", "0", "Agama agama", "agama", false);
        send("/targets/new", "0", "Agama agama", "agama", false)
                .andExpect(content().string(containsString("The site has a species of this name already.")));
    }

    @Test
    void aRenamedSpeciesKeepsItsOldNameInItsHistory() throws Exception {
        String page = "/targets/" + species.id();
        send(page + "/name", "0", "Moloch horridus II", "devil", false).andExpect(redirectedUrl(page));
        see(page)
                .andExpect(content().string(containsString("Moloch horridus II (devil), since")))
                .andExpect(content().string(containsString("Moloch horridus (Moloch horridus), since")))
                .andExpect(content().string(containsString("by " + vet.fullName())));
    }

    @Test
    void aStaleNameComesBackWithBothStates() throws Exception {
        String page = "/targets/" + species.id() + "/name";
        send(page, "0", "Name of the first", "devil", false);
        send(page, "0", "Name of the second", "devil", false)
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("<dd>Name of the first</dd>")))
                .andExpect(content().string(containsString("value=\"Name of the second\"")))
                .andExpect(content().string(containsString("name=\"version\" value=\"1\"")));
    }

    @Test
    void whoMayNotSetTargetsEntersNothingFromTheLibrary() throws Exception {
        SignedIn keeper = collection.person(collection.site(), Role.KEEPER);
        pages.perform(get("/library").with(collection.as(keeper)))
                .andExpect(content().string(not(containsString("/targets/new"))));
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(collection.as(vet)));
    }

    private ResultActions send(String path, String version, String scientific, String common, boolean asTyped)
            throws Exception {
        MockHttpServletRequestBuilder asked = post(path)
                .param("version", version)
                .param("scientificName", scientific)
                .param("commonName", common);
        if (asTyped) {
            asked.param("asTyped", "true");
        }
        return pages.perform(asked.with(csrf()).with(collection.as(vet)));
    }
}
