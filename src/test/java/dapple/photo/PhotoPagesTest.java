package dapple.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class PhotoPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Photos photos;

    @Autowired
    private MockMvc pages;

    private final UUID visit = UUID.randomUUID();
    private SiteFacts site;
    private SignedIn keeper;
    private String path;
    private long enclosure;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        enclosure = collection.emptyEnclosure(site);
        path = "/enclosures/" + enclosure + "/visits/" + visit;
    }

    @Test
    void aPhotoLeadsBackToTheVisit() throws Exception {
        send(Camera.jpeg(64, 48)).andExpect(redirectedUrl(path));
    }

    @Test
    void theVisitShowsItsPhotosSmall() throws Exception {
        long photo = kept();
        ask(get(path + "/photos"), keeper).andExpect(content().string(containsString("/photos/" + photo + "/small")));
    }

    @Test
    void theEnclosureShowsItsNewestPhotos() throws Exception {
        long photo = kept();
        ask(get("/enclosures/" + enclosure), keeper)
                .andExpect(content().string(containsString("/photos/" + photo + "/small")));
    }

    @Test
    void whereAPhotoIsTakenPeopleAreSpoken() throws Exception {
        ask(get(path + "/photos"), keeper).andExpect(content().string(containsString("Show the enclosure only")));
    }

    @Test
    void whatIsNoPictureIsSaidAtItsField() throws Exception {
        send("no picture".getBytes(StandardCharsets.UTF_8))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("This is no picture that can be read here")));
    }

    @Test
    void aFileThatIsTooLargeIsSaid() throws Exception {
        send(new byte[PicturePreparing.MOST_BYTES + 1])
                .andExpect(content().string(containsString("The file is larger than 8 MB")));
    }

    @Test
    void noFileIsSaid() throws Exception {
        ask(post(path + "/photos").param("key", UUID.randomUUID().toString()), keeper)
                .andExpect(content().string(containsString("Take or choose a photo first")));
    }

    @Test
    void theSeventhPhotoIsSaid() throws Exception {
        for (int at = 0; at < 6; at++) {
            kept();
        }
        send(Camera.jpeg(64, 48)).andExpect(content().string(containsString("This visit has its 6 photos")));
    }

    @Test
    void aPictureIsServedAsWhatItIsAndKeptByNobodyElse() throws Exception {
        ask(get("/photos/" + kept()), keeper)
                .andExpect(header().string("Content-Type", "image/jpeg"))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Cache-Control", "max-age=3600, private"));
    }

    @Test
    void aPictureIsNotServedToAnotherSite() throws Exception {
        ask(get("/photos/" + kept()), collection.person(collection.site(), Role.values()))
                .andExpect(status().isNotFound());
    }

    @Test
    void aRemovalWantsAReason() throws Exception {
        ask(post("/photos/" + kept() + "/removal").param("reason", " "), keeper)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Enter something here, on one line.")));
    }

    @Test
    void aPhotoThatWasRemovedIsSaidToBe() throws Exception {
        long photo = kept();
        ask(post("/photos/" + photo + "/removal").param("reason", "a hand is on it"), keeper)
                .andExpect(redirectedUrl(path));
        ask(get(path + "/photos"), keeper)
                .andExpect(content().string(containsString("a hand is on it")))
                .andExpect(content().string(not(containsString("/photos/" + photo + "/small"))));
    }

    @Test
    void aPhotoThatWasRemovedIsNotServed() throws Exception {
        long photo = kept();
        ask(post("/photos/" + photo + "/removal").param("reason", "a hand is on it"), keeper);
        ask(get("/photos/" + photo), keeper).andExpect(status().isNotFound());
    }

    @Test
    void anotherKeepersPhotoIsNotRemoved() throws Exception {
        long photo = kept();
        ask(post("/photos/" + photo + "/removal").param("reason", "why"), collection.person(site, Role.KEEPER))
                .andExpect(status().isConflict());
        assertThat(photos.get(site.id(), photo).isThere()).isTrue();
    }

    private long kept() throws Exception {
        send(Camera.jpeg(64, 48));
        return photos.newest(site.id(), enclosure).get(0).id();
    }

    private ResultActions send(byte[] file) throws Exception {
        return pages.perform(multipart(path + "/photos")
                .file(new MockMultipartFile("photo", "IMG_1.jpg", "image/jpeg", file))
                .param("key", UUID.randomUUID().toString())
                .with(csrf())
                .with(collection.as(keeper)));
    }

    private ResultActions ask(MockHttpServletRequestBuilder request, SignedIn person) throws Exception {
        return pages.perform(request.with(csrf()).with(collection.as(person)));
    }
}
