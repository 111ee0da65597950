package dapple.door;

/**
 * Check characters by ISO/IEC 7064, hybrid system MOD 37,36 [iso7064]: over the digits and letters, one character that shows every
 * single wrong character, and nearly every pair of neighbours that changed places.
 */
final class CheckCharacter {
    private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final int MODULUS = CHARACTERS.length();

    private CheckCharacter() {}

    /** The character that completes some digits and capital letters. */
    static char of(String text) {
        int product = MODULUS;
        for (int at = 0; at < text.length(); at++) {
            int sum = (product + place(text.charAt(at))) % MODULUS;
            product = (sum == 0 ? MODULUS : sum) * 2 % (MODULUS + 1);
        }
        return CHARACTERS.charAt(Math.floorMod(1 - product, MODULUS));
    }

    private static int place(char character) {
        int place = CHARACTERS.indexOf(character);
        if (place < 0) {
            throw new IllegalArgumentException("a checked text has digits and capital letters, was " + character);
        }
        return place;
    }
}
