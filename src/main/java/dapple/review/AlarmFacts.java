package dapple.review;

import java.time.Instant;

/**
 * A reading over the ceiling that nobody has seen yet. It is to be seen whatever has become of those whom it harmed.
 *
 * @param isOver whether it is over the ceiling by what is known now
 * @param isLivedUnder whether one of those for whom it is lives there now
 * @param isReadBelowSince whether the newest reading there came after it and is not over the ceiling
 */
public record AlarmFacts(
        long id,
        long enclosureId,
        String enclosure,
        String point,
        String place,
        long readingId,
        Instant takenAt,
        boolean isOver,
        boolean isLivedUnder,
        boolean isReadBelowSince) {
    /** What of it holds still, the worst first. */
    public enum Now {
        HOLDS,
        /** Those for whom it is over the ceiling have left. */
        LEFT,
        /** It was read there again, and not over the ceiling. */
        READ_BELOW,
        /** A later fact has it under the ceiling. */
        OTHERWISE
    }

    public Now now() {
        if (!isOver) {
            return Now.OTHERWISE;
        }
        if (!isLivedUnder) {
            return Now.LEFT;
        }
        return isReadBelowSince ? Now.READ_BELOW : Now.HOLDS;
    }
}
