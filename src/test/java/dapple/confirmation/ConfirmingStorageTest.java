package dapple.confirmation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.evidence.EvidenceKeeping;
import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.Target;
import dapple.target.Targets;
import dapple.target.VersionDetails;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class ConfirmingStorageTest {
    private static final UvZone ZONE_3 = new UvZone(3, LightMethod.SUNBEAM);
    private static final UvZone ZONE_4 = new UvZone(4, LightMethod.SUNBEAM);

    @Autowired
    private TestCollection collection;

    @Autowired
    private Confirming confirming;

    @Autowired
    private Targets targets;

    @Autowired
    private EvidenceKeeping evidence;

    private SiteFacts site;
    private SignedIn vet;
    private SpeciesFacts dragon;
    private SpeciesFacts devil;

    @BeforeEach
    void enter() {
        site = collection.site();
        vet = collection.person(site, Role.VET);
        dragon = collection.species(site, "Pogona vitticeps");
        devil = collection.species(site, "Moloch horridus");
    }

    @Test
    void suggestsWhatTheLibrarySays() {
        assertThat(confirming.candidates(site.id()))
                .extracting(candidate -> candidate.zones().get(0))
                .containsExactly(ZONE_4, ZONE_3);
    }

    @Test
    void suggestsNothingForASpeciesThatNobodyKnows() {
        SpeciesFacts strange = collection.species(site, "Zonosaurus ignotus");
        assertThat(confirming.candidates(site.id()))
                .filteredOn(candidate -> candidate.species().equals(strange))
                .allMatch(candidate -> candidate.zones().isEmpty())
                .hasSize(1);
    }

    @Test
    void makesFirstVersionsOfAllThatAreTicked() {
        confirm(new Confirmed(dragon.id(), ZONE_3), new Confirmed(devil.id(), ZONE_4));
        assertThat(targets.newest(site.id()).values())
                .extracting(VersionDetails::target)
                .extracting(Target::number)
                .containsExactly(1, 1);
    }

    @Test
    void takesTheLimitsOfTheZone() {
        confirm(new Confirmed(dragon.id(), ZONE_3));
        assertThat(targets.newest(site.id(), dragon.id()).orElseThrow().target().limits(Quantity.UV_INDEX))
                .contains(new Limits(new Band(2.9, 7.4), 0.29, 8.0));
    }

    @Test
    void keepsNameAndReason() {
        confirm(new Confirmed(dragon.id(), ZONE_3));
        VersionDetails version = targets.newest(site.id(), dragon.id()).orElseThrow();
        assertThat(version.approvedBy()).isEqualTo(vet.personId());
        assertThat(version.reason()).isEqualTo("agreed with the team");
    }

    @Test
    void putsTheLibrarysMarkOnRecordAsChosenEvidence() {
        confirm(new Confirmed(dragon.id(), ZONE_3));
        assertThat(evidence.chosen(site.id()).values())
                .allMatch(row ->
                        row.mark() == SourceMark.FROM_MEMORY && row.zone().equals(ZONE_3))
                .hasSize(1);
    }

    @Test
    void storesNothingIfOneHasGotATargetMeanwhile() {
        confirm(new Confirmed(devil.id(), ZONE_4));
        assertThatThrownBy(() -> confirm(new Confirmed(dragon.id(), ZONE_3), new Confirmed(devil.id(), ZONE_4)))
                .isInstanceOf(ConfirmedMeanwhileException.class);
        assertThat(targets.newest(site.id(), dragon.id())).isEmpty();
        assertThat(evidence.of(site.id(), dragon.id())).isEmpty();
    }

    @Test
    void takesNoZoneThatWasNotSuggested() {
        assertThatThrownBy(() -> confirm(new Confirmed(devil.id(), new UvZone(1, LightMethod.SHADE))))
                .isInstanceOf(ConflictException.class);
    }

    @Test
    void knowsNoSpeciesOfAnotherSite() {
        SpeciesFacts foreign = collection.species(collection.site(), "Pogona vitticeps");
        assertThatThrownBy(() -> confirm(new Confirmed(dragon.id(), ZONE_3), new Confirmed(foreign.id(), ZONE_3)))
                .isInstanceOf(NotFoundException.class);
        assertThat(targets.newest(site.id(), dragon.id())).isEmpty();
    }

    @Test
    void letsOneOfTwoAtOnceConfirm() {
        Confirmed[] both = {new Confirmed(dragon.id(), ZONE_3), new Confirmed(devil.id(), ZONE_4)};
        assertThat(Together.run(() -> confirm(both), () -> confirm(both[1], both[0])))
                .hasSize(1)
                .allMatch(ConfirmedMeanwhileException.class::isInstance);
        assertThat(targets.versions(site.id(), dragon.id())).hasSize(1);
    }

    @Test
    void countsForEarlierReadingsWhereThatIsChosen() {
        Confirmation confirmation = new Confirmation(
                List.of(new Confirmed(dragon.id(), ZONE_3), new Confirmed(devil.id(), ZONE_4)),
                vet.personId(),
                "agreed with the team",
                true);
        confirming.confirm(site.id(), confirmation);
        assertThat(targets.newest(site.id()).values())
                .extracting(version -> version.target().isForEarlierReadings())
                .containsExactly(true, true);
    }

    private void confirm(Confirmed... zones) {
        confirming.confirm(site.id(), new Confirmation(List.of(zones), vet.personId(), "agreed with the team", false));
    }
}
