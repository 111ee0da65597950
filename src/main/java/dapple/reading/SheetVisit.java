package dapple.reading;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The readings of a sheet that one person took at one enclosure at one time. */
record SheetVisit(
        long enclosureId, Instant at, boolean dayOnly, Optional<String> takenBy, List<SheetReading> readings) {
    private static final int VERSION_8 = 0x8000;
    private static final long VARIANT = 0x8000_0000_0000_0000L;

    static SheetVisit beginningWith(SheetReading first, List<SheetReading> readings) {
        return new SheetVisit(first.enclosureId(), first.takenAt(), first.dayOnly(), first.takenBy(), readings);
    }

    boolean includes(SheetReading reading) {
        return enclosureId == reading.enclosureId()
                && at.equals(reading.takenAt())
                && dayOnly == reading.dayOnly()
                && takenBy.equals(reading.takenBy());
    }

    /** The same whenever the same sheet is imported. */
    UUID key(long siteId) {
        return key(enclosureId, at, "visit " + siteId + " " + enclosureId + " " + at + " " + takenBy.orElse(""));
    }

    /** Of a reading; the same whenever the same place, time and meter are imported. */
    static UUID key(long siteId, SheetReading reading) {
        return key(
                reading.enclosureId(),
                reading.takenAt(),
                "reading " + siteId + " " + reading.pointId() + " " + reading.takenAt() + " " + reading.meterId());
    }

    /**
     * A UUID of version 8 (RFC 9562, 5.8): enclosure and minute, so that those of one enclosure stand together in an index in
     * the order of time, then part of the SHA-256 of what it is the key of.
     */
    private static UUID key(long enclosureId, Instant at, String of) {
        ByteBuffer hash = ByteBuffer.wrap(sha256(of));
        long place = ((enclosureId & 0xFFFF) << 48) | (((at.getEpochSecond() / 60) & 0xFFFF_FFFFL) << 16);
        long high = place | VERSION_8 | (hash.getShort() & 0xFFF);
        return new UUID(high, (hash.getLong() & (~VARIANT >>> 1)) | VARIANT);
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
