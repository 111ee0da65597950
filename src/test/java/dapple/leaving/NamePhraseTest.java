package dapple.leaving;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NamePhraseTest {
    private static final int ENOUGH = 200;

    @ParameterizedTest
    @CsvSource({
        "Ask Tamsin Quill., Ask Former keeper 7.",
        "ask TAMSIN QUILL, ask Former keeper 7",
        "Tamsin Quills’ lamp, Tamsin Quills’ lamp",
        "Zoë-Tamsin Quill, Zoë-Former keeper 7",
        "Tamsin Quill and Tamsin Quill, Former keeper 7 and Former keeper 7"
    })
    void isReplacedWhereItStandsWhole(String words, String replaced) {
        assertThat(phrase("Tamsin Quill").replacedIn(words, ENOUGH)).isEqualTo(replaced);
    }

    @Test
    void aSignInNameWithADotIsNoPattern() {
        assertThat(phrase("tamsin.q").isIn("tamsinxq")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Basil", "keeper", "Zoë"})
    void onePlainWordMayMeanSomethingElse(String name) {
        assertThat(NamePhrase.of(name, "Former keeper 7")).isEmpty();
    }

    @Test
    void neverGetsLongerThanItsColumn() {
        assertThat(phrase("T. Q").replacedIn("by T. Q", 10)).isEqualTo("by Former ");
    }

    private static NamePhrase phrase(String name) {
        return NamePhrase.of(name, "Former keeper 7").orElseThrow();
    }
}
