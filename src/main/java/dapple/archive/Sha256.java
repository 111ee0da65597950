package dapple.archive;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Sums by which anybody can tell whether a file is as it was written. */
final class Sha256 {
    private Sha256() {}

    static MessageDigest begun() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException cause) {
            throw new IllegalStateException("every Java has SHA-256", cause);
        }
    }

    static String text(MessageDigest ended) {
        return HexFormat.of().formatHex(ended.digest());
    }
}
