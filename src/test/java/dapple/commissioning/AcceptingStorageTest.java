package dapple.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.calibration.FittedRig.Part;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.Outlook;
import dapple.reading.ReadingLogging;
import dapple.site.ConflictException;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.RiggedHomes;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Clock;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class AcceptingStorageTest {
    private static final String SOURCE = "commissioning for a test";

    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private EnclosureScenes scenes;

    @Autowired
    private Outlook outlook;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Trials trials;

    @Autowired
    private Accepting accepting;

    @Autowired
    private Clock clock;

    private SignedIn lead;
    private Home home;

    @BeforeEach
    void read() {
        SiteFacts site = collection.site();
        lead = collection.person(site, Role.SUPERVISOR);
        SignedIn keeper = collection.person(site, Role.KEEPER);
        MeterFacts meter = collection.meter(site);
        home = homes.lit(
                site, lead, collection.species(site, lead, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
        new ReadHomes(scenes, outlook, logging, clock).read(keeper, meter, home.points(), 1.1);
    }

    @Test
    void whatIsAcceptedIsFoundAgainWithItsReadingsAndFactors() {
        accept(acceptance());
        CommissioningFacts found = trial().accepted().orElseThrow();
        assertThat(found.readings()).isEqualTo(4);
        assertThat(found.acceptedBy()).isEqualTo(lead.fullName());
        assertThat(found.factors())
                .filteredOn(factor -> factor.part() == Part.LAMP)
                .singleElement()
                .satisfies(factor -> {
                    assertThat(factor.quantity()).isEqualTo(Quantity.UV_INDEX);
                    assertThat(factor.kept()).isTrue();
                });
    }

    @Test
    void theSameEntryIsStoredOnce() {
        Acceptance acceptance = acceptance();
        accept(acceptance);
        accept(acceptance);
        assertThat(trial().accepted()).isPresent();
    }

    @Test
    void aRigIsAcceptedOnce() {
        Acceptance one = acceptance();
        Acceptance other = acceptance();
        accept(one);
        assertThatThrownBy(() -> accept(other)).isInstanceOf(ConflictException.class);
    }

    @Test
    void ofTwoAtOnceOneIsRefused() {
        Acceptance one = acceptance();
        Acceptance other = acceptance();
        assertThat(Together.run(() -> accept(one), () -> accept(other)))
                .singleElement()
                .isInstanceOf(ConflictException.class);
    }

    private Trial trial() {
        return trials.open(lead, home.enclosureId()).trial().orElseThrow();
    }

    private Acceptance acceptance() {
        return new Acceptance(lead, trial(), UUID.randomUUID(), "as planned");
    }

    private void accept(Acceptance acceptance) {
        accepting.accept(acceptance, SOURCE);
    }
}
