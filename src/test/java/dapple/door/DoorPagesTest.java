package dapple.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
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
import jakarta.servlet.http.Cookie;
import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class DoorPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Doors doors;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;
    private SignedIn keeper;
    private long enclosure;
    private DoorCode code;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        keeper = collection.person(site, Role.KEEPER);
        enclosure = collection.emptyEnclosure(site);
        code = Optional.ofNullable(doors.coded(site.id(), Set.of(enclosure), supervisor.personId())
                        .get(enclosure))
                .map(DoorFacts::code)
                .orElseThrow();
    }

    @Test
    void theLabelLeadsAKeeperToThePhonePage() throws Exception {
        ask(get("/d/" + code.text()), keeper)
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/enclosures/" + enclosure + "/on-phone"));
    }

    @Test
    void theLabelLeadsAVetToTheEnclosure() throws Exception {
        ask(get("/d/" + code.text()), collection.person(site, Role.VET))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/enclosures/" + enclosure));
    }

    @Test
    void theLabelOfAnotherSiteIsNotFound() throws Exception {
        ask(get("/d/" + code.text()), collection.person(collection.site(), Role.KEEPER))
                .andExpect(status().isNotFound());
    }

    @Test
    void aPhoneThatIsNotSignedInSignsInAndGoesOn() throws Exception {
        Cookie[] session = pages.perform(get("/d/" + code.text()))
                .andExpect(redirectedUrl("/sign-in"))
                .andReturn()
                .getResponse()
                .getCookies();
        String onward = pages.perform(post("/sign-in")
                        .cookie(session)
                        .param("signInName", keeper.signInName())
                        .param("password", collection.password())
                        .with(csrf()))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        assertThat(onward).contains("/d/" + code.text());
    }

    @Test
    void whatWasTypedLeadsToTheDoor() throws Exception {
        ask(get("/d").param("code", code.grouped().toLowerCase(Locale.ROOT)), keeper)
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/d/" + code.text()));
    }

    @Test
    void aWrongCheckCharacterIsSaidAndWhatWasTypedKept() throws Exception {
        String wrong = code.text().substring(0, 5) + (code.text().endsWith("2") ? "3" : "2");
        ask(get("/d").param("code", wrong), keeper)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("One of the characters is wrong")))
                .andExpect(content().string(containsString("value=\"" + wrong + "\"")));
    }

    @ParameterizedTest
    @CsvSource({"12, has six characters", "-1, has six characters", "22222E, has no such character"})
    void whatIsNoCodeIsSaid(String typed, String said) throws Exception {
        ask(get("/d").param("code", typed), keeper).andExpect(content().string(containsString(said)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/d/abc", "/d/%3Cscript%3E", "/d/222222222222"})
    void aDamagedAddressAsksForTheCode(String path) throws Exception {
        ask(get(URI.create(path)), keeper)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"door-code\"")));
    }

    @Test
    void aReplacedLabelSaysSo() throws Exception {
        doors.renew(site.id(), enclosure, code, "torn off on purpose", supervisor.personId());
        ask(get("/d/" + code.text()), keeper)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("torn off on purpose")))
                .andExpect(content().string(containsString("/enclosures/" + enclosure + "/on-phone")));
    }

    @Test
    void todayAsksThoseForTheCodeWhoRead() throws Exception {
        ask(get("/"), keeper).andExpect(content().string(containsString("id=\"door-code\"")));
    }

    @Test
    void todayAsksNobodyElseForTheCode() throws Exception {
        ask(get("/"), collection.person(site, Role.VET))
                .andExpect(content().string(not(containsString("id=\"door-code\""))));
    }

    @Test
    void labelsForARoomGiveItsEnclosuresCodes() throws Exception {
        SiteFacts fresh = collection.site();
        SignedIn lead = collection.person(fresh, Role.LIGHTING_LEAD);
        collection.emptyEnclosure(fresh);
        ask(choice().param("all", "true"), lead).andExpect(status().is3xxRedirection());
        assertThat(doors.open(fresh.id())).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "abc", "0", "22", "1e400", "NaN", "-3"})
    void aWrongPlaceComesBackAsTyped(String typed) throws Exception {
        ask(
                        post("/doors/labels")
                                .param("all", "true")
                                .param("sheet", "A4_3_BY_7")
                                .param("first", typed),
                        supervisor)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("first-wrong")))
                .andExpect(content().string(containsString("value=\"" + typed + "\"")));
    }

    @Test
    void nothingChosenIsSaid() throws Exception {
        ask(choice(), supervisor).andExpect(content().string(containsString("Choose which enclosures")));
    }

    @Test
    void anEnclosureOfAnotherSiteIsNotChosen() throws Exception {
        long strange = collection.emptyEnclosure(collection.site());
        ask(choice().param("enclosure", String.valueOf(strange)), supervisor)
                .andExpect(content().string(containsString("Choose which enclosures")));
    }

    @Test
    void theAddressIsShownBeforePrinting() throws Exception {
        ask(
                        labels("/doors/labels").with(request -> {
                            request.setServerName("lizards.example.org");
                            return request;
                        }),
                        supervisor)
                .andExpect(content().string(containsString("http://lizards.example.org<")))
                .andExpect(content().string(containsString("Phones must be able to reach this address")));
    }

    @Test
    void anAddressThatNoPhoneReachesIsSaid() throws Exception {
        ask(labels("/doors/labels"), supervisor).andExpect(content().string(containsString("no phone can reach it")));
    }

    @Test
    void theLabelsArePrintedAsPdf() throws Exception {
        byte[] pdf = ask(labels("/doors/labels.pdf"), supervisor)
                .andExpect(header().string("Content-Type", "application/pdf"))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document)).contains(code.grouped());
        }
    }

    @Test
    void aNewCodeWantsAReason() throws Exception {
        ask(post("/enclosures/{id}/door", enclosure).param("seen", code.text()).param("reason", " "), supervisor)
                .andExpect(content().string(containsString("Enter something here, on one line.")));
    }

    @Test
    void aNewCodePostedTwiceIsGivenOnce() throws Exception {
        for (int time = 0; time < 2; time++) {
            ask(
                            post("/enclosures/{id}/door", enclosure)
                                    .param("seen", code.text())
                                    .param("reason", "lost"),
                            supervisor)
                    .andExpect(redirectedUrl("/enclosures/" + enclosure + "/door"));
        }
        assertThat(doors.of(site.id(), enclosure)).hasSize(2);
    }

    private MockHttpServletRequestBuilder labels(String path) {
        return get(path)
                .param("enclosure", String.valueOf(enclosure))
                .param("sheet", "A4_3_BY_7")
                .param("first", "1");
    }

    private static MockHttpServletRequestBuilder choice() {
        return post("/doors/labels").param("sheet", "A4_3_BY_7").param("first", "1");
    }

    private ResultActions ask(MockHttpServletRequestBuilder request, SignedIn person) throws Exception {
        return pages.perform(request.with(csrf()).with(collection.as(person)));
    }
}
