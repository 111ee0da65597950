package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Meaning;
import dapple.importing.sheet.Survey;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One import: a file that was sent, what is said of it, and what came of it.
 *
 * @param state how far it is on record; what is under way only the program at hand knows
 * @param leftOut files beside the sheets that are none
 * @param tried what it would do; none: not tried since the sheets were last said to mean something else
 * @param done what it did
 */
record Run(
        long id,
        long siteId,
        long begunBy,
        Instant begunAt,
        String fileName,
        String sha256,
        long bytes,
        State state,
        List<Survey> surveys,
        List<String> leftOut,
        Choices choices,
        Optional<Tried> tried,
        Optional<Done> done,
        Optional<Instant> endedAt) {
    /** How far an import is. */
    enum State {
        /** Sent, and nothing stored of it. */
        OPEN,
        DONE,
        /** Given up by who sent it. */
        DROPPED,
        /** Its file has been deleted after some days. */
        EXPIRED
    }

    public boolean isOpen() {
        return state == State.OPEN;
    }

    /** Whether any column is one of readings. */
    public boolean hasReadings() {
        return choices.sheets().stream()
                .flatMap(sheet -> sheet.meanings().stream())
                .flatMap(code -> Meaning.of(code).stream())
                .anyMatch(meaning ->
                        meaning instanceof Meaning.Amount || meaning.equals(new Meaning.Of(Field.READ_AMOUNT)));
    }

    long rows() {
        return surveys.stream().mapToLong(Survey::rows).sum();
    }
}
