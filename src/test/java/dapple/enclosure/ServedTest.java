package dapple.enclosure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class ServedTest {
    private static final Served A_SPECIES_AND_AN_ANIMAL = new Served(Set.of(1L), Set.of(20L));

    @Test
    void whereNobodyIsNamedAllAreServed() {
        assertThat(Served.ALL.holds(1, 10)).isTrue();
    }

    @Test
    void whoeverIsOfANamedSpeciesIsServed() {
        assertThat(A_SPECIES_AND_AN_ANIMAL.holds(1, 10)).isTrue();
    }

    @Test
    void aNamedAnimalIsServed() {
        assertThat(A_SPECIES_AND_AN_ANIMAL.holds(2, 20)).isTrue();
    }

    @Test
    void othersOfItsSpeciesAreNot() {
        assertThat(A_SPECIES_AND_AN_ANIMAL.holds(2, 21)).isFalse();
    }
}
