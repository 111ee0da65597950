package dapple.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class DoorsStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Doors doors;

    private SiteFacts site;
    private SignedIn supervisor;
    private long enclosure;
    private long other;

    @BeforeEach
    void furnish() {
        site = collection.site();
        supervisor = collection.person(site, Role.SUPERVISOR);
        enclosure = collection.emptyEnclosure(site);
        other = collection.emptyEnclosure(site);
    }

    @Test
    void anEnclosureHasNoCodeBeforeLabelsAreAskedFor() {
        assertThat(doors.open(site.id())).isEmpty();
    }

    @Test
    void labelsGiveEachEnclosureACodeOfItsOwn() {
        coded(enclosure, other);
        assertThat(doors.open(site.id()).values())
                .extracting(DoorFacts::code)
                .doesNotHaveDuplicates()
                .hasSize(2);
    }

    @Test
    void theSameLabelsAgainKeepTheirCodes() {
        DoorCode first = coded(enclosure);
        assertThat(coded(enclosure)).isEqualTo(first);
    }

    @Test
    void twoWhoPrintAtOnceGetOneCode() {
        List<Throwable> thrown = Together.run(() -> coded(enclosure, other), () -> coded(other, enclosure));
        assertThat(thrown).isEmpty();
        assertThat(doors.of(site.id(), enclosure)).hasSize(1);
    }

    @Test
    void aCodeIsFoundAtItsSite() {
        DoorCode code = coded(enclosure);
        assertThat(doors.find(site.id(), code)).map(DoorFacts::enclosureId).contains(enclosure);
    }

    @Test
    void aCodeIsNotFoundAtAnotherSite() {
        DoorCode code = coded(enclosure);
        assertThat(doors.find(collection.site().id(), code)).isEmpty();
    }

    @Test
    void noCodeIsGivenToWhatAnotherSiteOwns() {
        long strange = collection.emptyEnclosure(collection.site());
        assertThatThrownBy(() -> coded(strange)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void aNewCodeTakesThePlaceOfTheOld() {
        DoorCode old = coded(enclosure);
        renew(old);
        assertThat(doors.open(site.id()).get(enclosure))
                .extracting(DoorFacts::code)
                .isNotEqualTo(old);
    }

    @Test
    void theOldCodeSaysWhyItIsOutOfUse() {
        DoorCode old = coded(enclosure);
        renew(old);
        assertThat(doors.find(site.id(), old).flatMap(DoorFacts::replaced))
                .map(DoorFacts.Replaced::reason)
                .contains("lost");
    }

    @Test
    void twoWhoRenewAtOnceGiveOneNewCode() {
        DoorCode old = coded(enclosure);
        Together.run(() -> renew(old), () -> renew(old));
        assertThat(doors.of(site.id(), enclosure)).hasSize(2);
    }

    private DoorCode coded(long first, long... more) {
        List<Long> wanted = new ArrayList<>(List.of(first));
        for (long one : more) {
            wanted.add(one);
        }
        return Optional.ofNullable(
                        doors.coded(site.id(), wanted, supervisor.personId()).get(first))
                .map(DoorFacts::code)
                .orElseThrow();
    }

    private void renew(DoorCode seen) {
        doors.renew(site.id(), enclosure, seen, "lost", supervisor.personId());
    }
}
