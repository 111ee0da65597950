package dapple.species;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
    /** Counted by hand; kitten and sitting is the example of the textbooks (from memory). */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "pogona, pogona, 0",
        "vitticeps, viticeps, 1",
        "'', agama, 5",
        "agama, '', 5",
        "ab, ba, 2"
    })
    void countsLettersToChange(String one, String other, int letters) {
        assertThat(Spelling.distance(one, other)).isEqualTo(letters);
    }

    @Test
    void isTheSameBothWays() {
        assertThat(Spelling.distance("stellagama", "laudakia")).isEqualTo(Spelling.distance("laudakia", "stellagama"));
    }
}
