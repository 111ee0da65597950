package dapple.door;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckCharacterTest {
    private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final String TEXT = "K7M4X";

    /**
     * Identifiers that ISO/IEC 7064, MOD 37,36 completes: the example of a recording industry's release identifier and, of
     * the audiovisual number of ISO 15706, the one with and the one without its version. All three from memory.
     */
    @ParameterizedTest
    @CsvSource({"A12425GABC1234002, M", "00000000D07A0090, Q", "00000000D07A009000000000, X"})
    void completesPublishedIdentifiers(String text, char check) {
        assertThat(CheckCharacter.of(text)).isEqualTo(check);
    }

    @Test
    void showsEverySingleWrongCharacter() {
        for (int at = 0; at < TEXT.length(); at++) {
            for (int instead = 0; instead < CHARACTERS.length(); instead++) {
                char other = CHARACTERS.charAt(instead);
                if (other != TEXT.charAt(at)) {
                    String wrong = TEXT.substring(0, at) + other + TEXT.substring(at + 1);
                    assertThat(CheckCharacter.of(wrong)).as(wrong).isNotEqualTo(CheckCharacter.of(TEXT));
                }
            }
        }
    }
}
