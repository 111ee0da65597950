package dapple.species;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.TakenException;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.orm.ObjectOptimisticLockingFailureException;

@StorageTest
class SpeciesStorageTest {
    private static final SpeciesName OLD = new SpeciesName("Laudakia stellio", "Agama");
    private static final SpeciesName NEW = new SpeciesName("Stellagama stellio", "Roughtail rock agama");

    @Autowired
    private TestCollection collection;

    @Autowired
    private SpeciesKeeping species;

    private SiteFacts site;
    private SpeciesFacts entered;

    @BeforeEach
    void enter() {
        site = collection.site();
        entered = species.add(site.id(), OLD);
    }

    @Test
    void keepsTheOldNameInItsHistory() {
        species.rename(site.id(), entered.id(), entered.version(), NEW);
        assertThat(species.names(site.id(), entered.id()))
                .extracting(NameOnRecord::name)
                .containsExactly(NEW, OLD);
    }

    @Test
    void staysTheSameSpeciesWhenRenamed() {
        species.rename(site.id(), entered.id(), entered.version(), NEW);
        assertThat(species.get(site.id(), entered.id()).scientificName()).isEqualTo("Stellagama stellio");
    }

    @Test
    void isNotRenamedOverAnothersChange() {
        species.rename(site.id(), entered.id(), entered.version(), NEW);
        assertThatThrownBy(() -> species.rename(site.id(), entered.id(), entered.version(), OLD))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void hasANameOfItsOwnInAnyCaseOfLetters() {
        assertThatThrownBy(() -> species.add(site.id(), new SpeciesName("laudakia STELLIO", "another")))
                .isInstanceOf(TakenException.class);
    }

    @Test
    void isEnteredOnceByTwoAtOnce() {
        assertThat(Together.run(() -> species.add(site.id(), NEW), () -> species.add(site.id(), NEW)))
                .hasSize(1)
                .allMatch(TakenException.class::isInstance);
    }

    @Test
    void isUnknownToAnotherSite() {
        SiteFacts elsewhere = collection.site();
        assertThatThrownBy(() -> species.get(elsewhere.id(), entered.id())).isInstanceOf(NotFoundException.class);
    }

    @Test
    void tellsNoNamesToAnotherSite() {
        assertThat(species.names(collection.site().id(), entered.id())).isEmpty();
    }
}
