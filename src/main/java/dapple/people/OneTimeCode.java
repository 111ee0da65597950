package dapple.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Locale;

/** Twelve characters that are read aloud or copied from paper without mistakes: 60 bits of chance. */
record OneTimeCode(String text) {
    /** Crockford's alphabet: no I, L, O or U. */
    private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int LENGTH = 12;
    private static final SecureRandom CHANCE = new SecureRandom();

    static OneTimeCode random() {
        StringBuilder text = new StringBuilder();
        for (int place = 0; place < LENGTH; place++) {
            if (place > 0 && place % 4 == 0) {
                text.append('-');
            }
            text.append(ALPHABET.charAt(CHANCE.nextInt(ALPHABET.length())));
        }
        return new OneTimeCode(text.toString());
    }

    boolean matches(String typed) {
        return MessageDigest.isEqual(bytes(text), bytes(typed));
    }

    /** Case, hyphens and spaces do not count. */
    static String normalised(String typed) {
        return typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }

    private static byte[] bytes(String typed) {
        return normalised(typed).getBytes(StandardCharsets.UTF_8);
    }
}
