package dapple.door;

import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;

/**
 * The code on a door: five characters that say nothing, and a check character. No two characters look alike, and without
 * vowels no code is a word.
 */
public record DoorCode(String text) {
    static final String ALPHABET = "23456789CDFHJKMNPRTVWXY";
    private static final int LENGTH = 6;

    /** What people take for a character of a code, or their hand makes of it. */
    private static final Map<Character, Character> TAKEN_FOR =
            Map.of('0', 'D', 'O', 'D', 'Q', 'D', '1', '7', 'A', '4', 'B', '8', 'G', '6', 'S', '5', 'U', 'V', 'Z', '2');

    public DoorCode {
        if (!isWellFormed(text) || !isChecked(text)) {
            throw new IllegalArgumentException(
                    "a door code has five characters of " + ALPHABET + " and their check character, was " + text);
        }
    }

    /** A code by chance. Only those are taken whose check character is readable too. */
    static DoorCode random(RandomGenerator chance) {
        while (true) {
            String said = chance.ints(LENGTH - 1L, 0, ALPHABET.length())
                    .mapToObj(at -> ALPHABET.substring(at, at + 1))
                    .collect(Collectors.joining());
            char check = CheckCharacter.of(said);
            if (ALPHABET.indexOf(check) >= 0) {
                return new DoorCode(said + check);
            }
        }
    }

    /** What somebody typed: in small letters, with gaps, with characters that look like those of a code. */
    static Typed typed(String typed) {
        String plain = typed.replaceAll("(?U)[\\s.\\-–]", "").toUpperCase(Locale.ROOT);
        String meant = plain.chars()
                .mapToObj(one -> String.valueOf(TAKEN_FOR.getOrDefault((char) one, (char) one)))
                .collect(Collectors.joining());
        if (meant.length() != LENGTH) {
            return new Typed.Wrong(Slip.LENGTH);
        }
        if (!isWellFormed(meant)) {
            return new Typed.Wrong(Slip.CHARACTER);
        }
        return isChecked(meant) ? new Typed.Right(new DoorCode(meant)) : new Typed.Wrong(Slip.CHECK);
    }

    private static boolean isWellFormed(String text) {
        return text.length() == LENGTH && text.chars().allMatch(one -> ALPHABET.indexOf(one) >= 0);
    }

    private static boolean isChecked(String text) {
        return CheckCharacter.of(text.substring(0, LENGTH - 1)) == text.charAt(LENGTH - 1);
    }

    /** As labels and pages show it: in two groups of three, as people read it aloud. */
    public String grouped() {
        return text.substring(0, LENGTH / 2) + " " + text.substring(LENGTH / 2);
    }

    /** What was typed: a code, or why it is none. */
    sealed interface Typed {
        record Right(DoorCode code) implements Typed {}

        record Wrong(Slip slip) implements Typed {}
    }

    /** What is wrong with a code that was typed. */
    enum Slip {
        LENGTH,
        CHARACTER,
        CHECK
    }
}
