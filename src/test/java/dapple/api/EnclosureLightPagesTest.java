package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.light.quantity.Quantity;
import dapple.light.survey.FoundZones;
import dapple.light.zone.BaskingPatch;
import dapple.light.zone.Zone;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.LightInside;
import dapple.prediction.Outlook;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

/** What an enclosure's page shows is what the scene that it offers is answered with. */
@PagesTest
class EnclosureLightPagesTest extends ProgramPages {
    /** Directions are made of length 1 once more when they are read: the last bits may differ. */
    private static final double LAST_BITS = 1e-9;

    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private EnclosureScenes scenes;

    @Autowired
    private Outlook outlook;

    @Autowired
    private Clock clock;

    private Home home;
    private EnclosureScene scene;
    private LightInside light;
    private JsonNode answer;

    @BeforeEach
    void ask() throws Exception {
        SiteFacts site = collection.site();
        SignedIn lead = collection.person(site, Role.LIGHTING_LEAD, Role.SUPERVISOR);
        SpeciesFacts species = collection.species(site, lead, "Tiliqua scincoides", new UvZone(2, LightMethod.SUNBEAM));
        home = homes.lit(site, lead, species);
        scene = scenes.at(site.id(), home.enclosureId(), clock.instant(), Optional.empty(), Optional.empty());
        light = outlook.of(scene);
        String document = pages.perform(
                        get("/enclosures/" + home.enclosureId() + "/scene.json").with(collection.as(lead)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        answer = answer("/api/v1/light-field", document);
    }

    @Test
    void theValuesAtThePointsAreTheSame() {
        assertThat(scene.points()).hasSize(4);
        for (int index = 0; index < 4; index++) {
            JsonNode answered = answer.path("receivers").path(index);
            double uvi = light.at(scene.points().get(index), Quantity.UV_INDEX)
                    .orElseThrow()
                    .amount();
            assertThat(answered.path("values").path("uvi").asDouble(-1))
                    .isCloseTo(uvi, within(LAST_BITS * Math.max(1, uvi)));
        }
    }

    @Test
    void theSharesAreTheSame() {
        JsonNode shares = answer.path("zones").path("shares");
        Map<Zone, Double> shown = found().shares();
        assertThat(answer.path("zones").path("places").asInt()).isEqualTo(found().reachable());
        assertThat(shares.path("overCeiling").asDouble(-1)).isEqualTo(shown.get(Zone.OVER_CEILING));
        assertThat(shares.path("aboveTarget").asDouble(-1)).isEqualTo(shown.get(Zone.ABOVE_TARGET));
        assertThat(shares.path("basking").asDouble(-1)).isEqualTo(shown.get(Zone.BASKING));
        assertThat(shares.path("gradient").asDouble(-1)).isEqualTo(shown.get(Zone.GRADIENT));
        assertThat(shares.path("shade").asDouble(-1)).isEqualTo(shown.get(Zone.SHADE));
    }

    @Test
    void thePatchIsTheSame() {
        FoundZones.Patch patch =
                found().onSurface().flatMap(FoundZones.OnSurface::patch).orElseThrow();
        BaskingPatch shown = patch.found();
        JsonNode answered = answer.path("zones").path("patch");
        assertThat(answered.path("area").asDouble(-1)).isCloseTo(shown.areaSquareMetres(), within(LAST_BITS));
        assertThat(answered.path("largestDisc").asDouble(-1)).isCloseTo(shown.largestDiscMetres(), within(LAST_BITS));
        assertThat(answered.path("bodyFits").asBoolean()).isEqualTo(shown.fits());
    }

    @Test
    void waysAreTheSame() {
        FoundZones.Patch patch =
                found().onSurface().flatMap(FoundZones.OnSurface::patch).orElseThrow();
        assertThat(answer.path("zones").path("wayOut").asBoolean())
                .isEqualTo(patch.body().orElseThrow().wayOut());
        assertThat(answer.path("zones").path("gradientPresent").asBoolean()).isEqualTo(found().gradientPresent());
    }

    @Test
    void thereIsSomethingToCompare() {
        assertThat(found().shares().get(Zone.BASKING)).isBetween(0.02, 0.9);
        assertThat(found().shares().get(Zone.GRADIENT)).isBetween(0.02, 0.9);
    }

    private FoundZones found() {
        return light.zones().orElseThrow().found();
    }
}
