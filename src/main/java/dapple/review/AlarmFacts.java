package dapple.review;

import java.time.Instant;

/**
 * A reading over the ceiling that nobody has seen yet. It is to be seen whatever has become of those whom it harmed.
 *
 * @param isOver whether it is over the ceiling by what is known now
 * @param isLivedUnder whether one of those for whom it is lives there now
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
        boolean isLivedUnder) {
    /** What of it holds still, the worst first. */
    public enum Now {
        HOLDS,
        /** Those for whom it is over the ceiling have left. */
        LEFT,
        /** A later fact has it under the ceiling. */
        OTHERWISE
    }

    public Now now() {
        if (!isOver) {
            return Now.OTHERWISE;
        }
        return isLivedUnder ? Now.HOLDS : Now.LEFT;
    }
}
