package dapple.comparison;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/**
 * Draws one reading in ten by the key of the reading and a seed of the site that nobody is shown: who reads can neither
 * foresee nor choose it, and that it was drawn by chance alone can be shown later.
 */
record RepeatDraw(UUID seed) {
    /** One in so many (common practice, no source). */
    static final int ONE_IN = 10;

    boolean takes(UUID readingKey) {
        ByteBuffer both = ByteBuffer.allocate(4 * Long.BYTES);
        both.putLong(seed.getMostSignificantBits()).putLong(seed.getLeastSignificantBits());
        both.putLong(readingKey.getMostSignificantBits()).putLong(readingKey.getLeastSignificantBits());
        long drawn = ByteBuffer.wrap(digest(both.array())).getLong();
        return Long.remainderUnsigned(drawn, ONE_IN) == 0;
    }

    private static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }
}
