package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** The form of LM-63 is typed from memory; the file is invented: a matt disc, whose intensity follows the cosine. */
@PagesTest
class PhotometryPagesTest {
    /** The intensities of the file have three decimals. */
    private static final Offset<Double> ROUNDED = Offset.offset(2e-3);

    @Autowired
    private TestCollection collection;

    @Autowired
    private Lamps lamps;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn lead;
    private long modelId;

    @BeforeEach
    void enter() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        modelId = collection.lampModel(site, LampClass.LED_SPOT).id();
    }

    @Test
    void theBeamOfAFileBecomesTheShapeOfTheModel() throws Exception {
        send("0", "data sheet", disc()).andExpect(status().is3xxRedirection());
        LampShape.Measured shape = (LampShape.Measured) shape().orElseThrow();
        assertThat(shape.relative().get(60)).isCloseTo(0.5, ROUNDED);
        assertThat(shape.radiusMetres()).contains(0.1);
    }

    @Test
    void theModelShowsItsBeam() throws Exception {
        send("0", "data sheet of the maker", disc());
        pages.perform(get("/lamp-models/" + modelId).with(collection.as(lead)))
                .andExpect(content()
                        .string(allOf(
                                containsString("223 cd"),
                                containsString("60° from the aim"),
                                containsString("data sheet of the maker"),
                                containsString("a beam by its photometric file"))));
    }

    @ParameterizedTest
    @CsvSource({
        "TILT=NONE,TILT=INCLUDE,Line 8: ",
        "1 1000 1 19 1 1 2,1 1000 1 19 1 2 2,Line 9: Type C alone",
        "222.817,NaN,Line 14: ",
        "222.817,-5,Line 14: ",
        "222.817,1e400,Line 14: ",
        "222.817,0,Nothing of this light goes along the aim",
    })
    void whatElseItHoldsIsRefusedWithItsLine(String standing, String instead, String said) throws Exception {
        send("0", "data sheet", disc().replace(standing, instead))
                .andExpect(status().isOk())
                .andExpect(content().string(allOf(containsString("id=\"content-wrong\""), containsString(said))));
        assertThat(shape()).isEqualTo(before());
    }

    @Test
    void aFileThatIsTooLongIsRefused() throws Exception {
        send("0", "data sheet", "x".repeat(1_000_001))
                .andExpect(content().string(containsString("more than 1,000,000 characters")));
    }

    @Test
    void nothingIsNoFile() throws Exception {
        send("0", "data sheet", "").andExpect(content().string(containsString("Choose a file")));
    }

    @Test
    void whereItIsFromIsAsked() throws Exception {
        send("0", "", disc())
                .andExpect(content().string(allOf(containsString("id=\"source-wrong\""), containsString("TILT=NONE"))));
    }

    @Test
    void aStaleFormComesBackWithBothStates() throws Exception {
        send("0", "data sheet", disc());
        send("0", "another", disc()).andExpect(status().isConflict());
    }

    @Test
    void aFileTakenBackLeavesNoShape() throws Exception {
        send("0", "data sheet", disc());
        pages.perform(post("/lamp-models/" + modelId + "/photometry/removal")
                        .param("version", "1")
                        .with(csrf())
                        .with(collection.as(lead)))
                .andExpect(status().is3xxRedirection());
        assertThat(shape()).isEmpty();
    }

    @Test
    void theModelIsEditedWithItsBeamKept() throws Exception {
        send("0", "data sheet", disc());
        Optional<LampShape> measured = shape();
        pages.perform(post("/lamp-models/" + modelId + "/edit")
                        .param("version", "1")
                        .param("name", "Other name")
                        .param("lampClass", "LED_SPOT")
                        .param("shapeKind", "MEASURED")
                        .param("radiusMetres", "0.1")
                        .with(csrf())
                        .with(collection.as(lead)))
                .andExpect(status().is3xxRedirection());
        assertThat(shape()).isEqualTo(measured);
    }

    @Test
    void withoutAFileNoModelHasAShapeByOne() throws Exception {
        pages.perform(post("/lamp-models/" + modelId + "/edit")
                        .param("version", "0")
                        .param("name", "Other name")
                        .param("lampClass", "LED_SPOT")
                        .param("shapeKind", "MEASURED")
                        .with(csrf())
                        .with(collection.as(lead)))
                .andExpect(content().string(containsString("id=\"shapeKind-wrong\"")));
    }

    @Test
    void anotherSitesModelIsNotFound() throws Exception {
        lead = collection.person(collection.site(), Role.LIGHTING_LEAD);
        send("0", "data sheet", disc()).andExpect(status().isNotFound());
    }

    private Optional<LampShape> before() {
        return shape().filter(shape -> !(shape instanceof LampShape.Measured));
    }

    private Optional<LampShape> shape() {
        return lamps.model(site.id(), modelId).shape();
    }

    private ResultActions send(String version, String source, String file) throws Exception {
        return pages.perform(multipart("/lamp-models/" + modelId + "/photometry")
                .file(new MockMultipartFile("file", "a.ies", "text/plain", file.getBytes(StandardCharsets.UTF_8)))
                .param("version", version)
                .param("source", source)
                .with(csrf())
                .with(collection.as(lead)));
    }

    private static String disc() throws IOException {
        try (InputStream file = Objects.requireNonNull(
                PhotometryPagesTest.class.getResourceAsStream("/dapple/light/photometry/diffuse-disc.ies"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
