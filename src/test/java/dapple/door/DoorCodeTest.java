package dapple.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.door.DoorCode.Slip;
import dapple.door.DoorCode.Typed;
import java.util.HashSet;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DoorCodeTest {
    private static final int SEED = 31;
    private static final int MANY = 2000;

    private final Random chance = new Random(SEED);

    @Test
    void aRandomCodeIsReadBackAsTyped() {
        DoorCode code = DoorCode.random(chance);
        assertThat(DoorCode.typed(code.text())).isEqualTo(new Typed.Right(code));
    }

    @Test
    void smallLettersAndGapsDoNotMatter() {
        DoorCode code = DoorCode.random(chance);
        assertThat(DoorCode.typed(" " + code.grouped().toLowerCase(Locale.ROOT) + "- "))
                .isEqualTo(new Typed.Right(code));
    }

    @Test
    void codesHaveNoLookAlikesAndNoVowels() {
        Set<Character> used = new HashSet<>();
        IntStream.range(0, MANY)
                .forEach(at -> DoorCode.random(chance).text().chars().forEach(one -> used.add((char) one)));
        assertThat(used).hasSize(DoorCode.ALPHABET.length()).doesNotContain('0', 'O', '1', 'I', 'L', 'A', 'E', 'U');
    }

    @ParameterizedTest
    @CsvSource({"D, 0", "D, O", "D, q", "7, 1", "4, a", "8, B", "6, G", "5, s", "V, u", "2, Z"})
    void whatLooksLikeACharacterIsTakenForIt(String meant, String typed) {
        DoorCode code = with(meant);
        assertThat(DoorCode.typed(code.text().replace(meant, typed))).isEqualTo(new Typed.Right(code));
    }

    private DoorCode with(String character) {
        DoorCode code = DoorCode.random(chance);
        while (!code.text().contains(character)) {
            code = DoorCode.random(chance);
        }
        return code;
    }

    @Test
    void everySingleWrongCharacterIsSeen() {
        DoorCode code = DoorCode.random(chance);
        for (int at = 0; at < code.text().length(); at++) {
            for (char other : DoorCode.ALPHABET.toCharArray()) {
                String typed =
                        code.text().substring(0, at) + other + code.text().substring(at + 1);
                if (!typed.equals(code.text())) {
                    assertThat(DoorCode.typed(typed)).as(typed).isEqualTo(new Typed.Wrong(Slip.CHECK));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2", "2222222", "E07", "ﬀ"})
    void anotherLengthIsSaid(String typed) {
        assertThat(DoorCode.typed(typed)).isEqualTo(new Typed.Wrong(Slip.LENGTH));
    }

    @ParameterizedTest
    @ValueSource(strings = {"22222E", "22222/", "22222ß", "2222😀"})
    void whatNoCodeHasIsSaid(String typed) {
        assertThat(DoorCode.typed(typed)).isInstanceOf(Typed.Wrong.class);
    }

    @Test
    void noCodeIsMadeWithAWrongCheckCharacter() {
        String right = DoorCode.random(chance).text();
        String wrong = right.substring(0, 5) + (right.endsWith("2") ? "3" : "2");
        assertThatThrownBy(() -> new DoorCode(wrong)).isInstanceOf(IllegalArgumentException.class);
    }
}
