package dapple.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.site.TakenException;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class EvidenceStorageTest {
    private static final UvZone ZONE_2 = new UvZone(2, LightMethod.SHADE);
    private static final UvZone ZONE_4 = new UvZone(4, LightMethod.SUNBEAM);

    @Autowired
    private TestCollection collection;

    @Autowired
    private EvidenceKeeping evidence;

    private SiteFacts site;
    private SignedIn vet;
    private SpeciesFacts species;
    private EvidenceFacts older;
    private EvidenceFacts newer;

    @BeforeEach
    void add() {
        site = collection.site();
        vet = collection.person(site, Role.VET);
        species = collection.species(site, "Furcifer pardalis");
        older = evidence.add(site.id(), row(ZONE_2, "an older list"));
        newer = evidence.add(site.id(), row(ZONE_4, "a field study"));
    }

    @Test
    void keepsRowsThatDisagree() {
        assertThat(evidence.of(site.id(), species.id())).containsExactly(older, newer);
    }

    @Test
    void choosesNothingByItself() {
        assertThat(evidence.chosen(site.id())).isEmpty();
    }

    @Test
    void keepsASourceOnceForAZone() {
        assertThatThrownBy(() -> evidence.add(site.id(), row(ZONE_4, "a field study")))
                .isInstanceOf(TakenException.class);
    }

    @Test
    void hasOneChosenAtATime() {
        evidence.choose(site.id(), choice(0, older, "all we had"));
        evidence.choose(site.id(), choice(1, newer, "measured in the field"));
        assertThat(evidence.chosen(site.id()).values()).containsExactly(newer);
    }

    @Test
    void remembersWhoChoseWhenAndWhy() {
        evidence.choose(site.id(), choice(0, older, "all we had"));
        evidence.choose(site.id(), choice(1, newer, "measured in the field"));
        assertThat(evidence.choices(site.id(), species.id()))
                .extracting(ChoiceFacts::reason)
                .containsExactly("measured in the field", "all we had");
    }

    @Test
    void doesNotBackdateAChoice() {
        ChoiceFacts first = evidence.choose(site.id(), choice(0, older, "all we had"));
        ChoiceFacts second = evidence.choose(site.id(), choice(1, newer, "measured in the field"));
        assertThat(second.chosenAt()).isAfterOrEqualTo(first.chosenAt());
        assertThat(evidence.choices(site.id(), species.id()).get(1)).isEqualTo(first);
    }

    @Test
    void takesAChoiceSentTwiceOnce() {
        evidence.choose(site.id(), choice(0, older, "all we had"));
        evidence.choose(site.id(), choice(0, older, "all we had"));
        assertThat(evidence.choices(site.id(), species.id())).hasSize(1);
    }

    @Test
    void tellsTheSecondOfTwoWhoChooseAtOnce() {
        assertThat(Together.run(
                        () -> evidence.choose(site.id(), choice(0, older, "all we had")),
                        () -> evidence.choose(site.id(), choice(0, newer, "measured in the field"))))
                .hasSize(1)
                .allMatch(ConflictException.class::isInstance);
        assertThat(evidence.choices(site.id(), species.id())).hasSize(1);
    }

    @Test
    void choosesNoRowOfAnotherSpecies() {
        SpeciesFacts other = collection.species(site, "Iguana iguana");
        NewChoice wrong = new NewChoice(other.id(), 0, older.id(), "by mistake", vet.personId());
        assertThatThrownBy(() -> evidence.choose(site.id(), wrong)).isInstanceOf(NotFoundException.class);
    }

    private NewEvidence row(UvZone zone, String source) {
        return new NewEvidence(species.id(), zone, SourceMark.FROM_MEMORY, source, vet.personId());
    }

    private NewChoice choice(int seen, EvidenceFacts row, String reason) {
        return new NewChoice(species.id(), seen, row.id(), reason, vet.personId());
    }
}
