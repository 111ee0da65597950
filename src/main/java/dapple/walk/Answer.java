package dapple.walk;

import dapple.light.judging.State;
import java.util.Optional;
import java.util.UUID;

/**
 * What became of an entry.
 *
 * @param words what the phone shows
 * @param readingId empty: a reason instead of a reading, or nothing stored
 * @param state what the reading was judged to be, if it was
 */
record Answer(UUID key, Kind kind, String words, Optional<Long> readingId, Optional<State> state) {
    /** Whether it is stored. */
    enum Kind {
        STORED,
        /** It cannot be stored as it is; the phone keeps it. */
        REFUSED
    }

    static Answer refused(UUID key, String words) {
        return new Answer(key, Kind.REFUSED, words, Optional.empty(), Optional.empty());
    }

    static Answer stored(UUID key, String words) {
        return new Answer(key, Kind.STORED, words, Optional.empty(), Optional.empty());
    }
}
