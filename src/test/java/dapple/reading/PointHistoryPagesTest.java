package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.NewAnimal;
import dapple.enclosure.Enclosures;
import dapple.enclosure.Served;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** Whom a point was said to serve, and what was to be read there. */
@PagesTest
class PointHistoryPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Animals animals;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn supervisor;
    private SpeciesFacts bold;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        bold = collection.species(site, "Pogona vitticeps");
        home = collection.home(site, supervisor, bold);
    }

    @Test
    void namesTheSpeciesAndAnimalsOfWhichItWasSaid() throws Exception {
        AnimalFacts moss = animals.add(
                site.id(),
                new NewAnimal(
                        "2026-M",
                        "Moss",
                        collection.species(site, "Correlophus ciliatus").id()));
        serve(new Served(Set.of(bold.id()), Set.of(moss.id())));
        assertThat(newest()).contains("Whom it serves from all that live here to Moss, Pogona vitticeps");
    }

    @Test
    void saysThatItServesAllAgain() throws Exception {
        serve(Served.species(Set.of(bold.id())));
        serve(Served.ALL);
        assertThat(newest()).contains("Whom it serves from Pogona vitticeps to all that live here");
    }

    @Test
    void tellsWhatStayedWithWhatCame() throws Exception {
        SpeciesFacts shy = collection.species(site, "Correlophus ciliatus");
        serve(Served.species(Set.of(bold.id())));
        serve(Served.species(Set.of(bold.id(), shy.id())));
        assertThat(newest()).contains("from Pogona vitticeps to Correlophus ciliatus, Pogona vitticeps");
    }

    @Test
    void aNewPointNamesWhatIsReadThere() throws Exception {
        assertThat(newest()).contains("entered", "What is read there UV index").doesNotContain("Whom it serves");
    }

    private void serve(Served served) {
        enclosures.serve(site.id(), home.basking().id(), served);
    }

    /** The words of the first row of the history. */
    private String newest() throws Exception {
        String path = "/enclosures/" + home.enclosureId() + "/points/"
                + home.basking().id() + "/history";
        String page = pages.perform(get(path).with(collection.as(supervisor)))
                .andReturn()
                .getResponse()
                .getContentAsString();
        int begin = page.indexOf("<tbody>");
        return page.substring(begin, page.indexOf("</tr>", begin))
                .replaceAll("(?s)<[^>]*>|\\s+", " ")
                .replaceAll(" +", " ");
    }
}
