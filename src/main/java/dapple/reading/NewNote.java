package dapple.reading;

import java.time.Instant;
import java.util.UUID;

/**
 * A note on a visit to keep.
 *
 * @param key made where it was typed: the same key is stored once, however often it is sent
 * @param note one to 500 characters
 */
public record NewNote(UUID key, UUID visitKey, long enclosureId, String note, Instant notedAt) {
    /** Characters of a note. */
    public static final int LONGEST = 500;

    /** Whether a text can be kept as a note. */
    public static boolean isNote(String text) {
        return !text.isBlank() && text.length() <= LONGEST && text.indexOf('\0') < 0;
    }
}
