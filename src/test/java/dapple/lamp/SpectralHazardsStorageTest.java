package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.people.Role;
import dapple.site.ReferenceSpectra;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class SpectralHazardsStorageTest {
    /** 1.53 has three digits. */
    private static final double SHARE = 0.005;

    @Autowired
    private TestCollection collection;

    @Autowired
    private SpectrumFiling filing;

    @Autowired
    private Lamps lamps;

    @Autowired
    private SpectralHazards hazards;

    private SiteFacts site;
    private LampModelFacts model;

    @BeforeEach
    void furnish() {
        site = collection.site();
        model = collection.lampModel(site, LampClass.METAL_HALIDE);
    }

    /**
     * 30 J/m² [icnirp2004] are reached after 1.53 UV index hours of the standard sun [astmg173] by another program's integral;
     * outdoors 1.1 to 1.5 were measured.
     */
    @Test
    void theSunAllowsOneAndAHalfUvIndexHours() {
        String sun = ReferenceSpectra.sun("global_tilt_W_m2_nm").samples().stream()
                .map(sample -> sample.wavelengthNanometres() + "," + sample.wattsPerSquareMetrePerNanometre())
                .collect(Collectors.joining("\n"));
        long person = collection.person(site, Role.LIGHTING_LEAD).personId();
        long version = filing.dossier(site.id(), model.id()).version();
        filing.fileSpectrum(site.id(), model.id(), version, NewSpectrum.of("the sun", sun, person));
        double expected = 30 / (1.53 * 3600);
        assertThat(hazards.actinicPerUvIndex(site.id(), List.of(lamps.model(site.id(), model.id()))))
                .containsOnlyKeys(model.id())
                .hasEntrySatisfying(
                        model.id(), found -> assertThat(found).isCloseTo(expected, within(expected * SHARE)));
    }

    @Test
    void aModelWithoutSpectrumIsMissing() {
        assertThat(hazards.actinicPerUvIndex(site.id(), List.of(model))).isEmpty();
    }
}
