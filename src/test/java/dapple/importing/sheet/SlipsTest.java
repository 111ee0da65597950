package dapple.importing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipsTest {
    /** Worked by hand: letters left out, inserted, replaced, exchanged with a neighbour. */
    @ParameterizedTest
    @CsvSource({
        "vitticeps, vitticeps, 0",
        "viticeps, vitticeps, 1",
        "vittticeps, vitticeps, 1",
        "vittiseps, vitticeps, 1",
        "vitticesp, vitticeps, 1",
        "vitecesp, vitticeps, 3",
        "'', abc, 3"
    })
    void countsSlipsOfTheHand(String one, String other, int expected) {
        assertThat(Slips.between(one, other)).isEqualTo(expected);
    }
}
