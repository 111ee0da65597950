package dapple.practice;

import java.time.Instant;
import java.util.Optional;

/**
 * Something that speaks for or against a meter from an instant on.
 *
 * @param lampSince of a check by a reference lamp: when its first value was taken
 */
record Sign(Instant at, Kind kind, Optional<Instant> lampSince) {
    enum Kind {
        DROPPED,
        DARK_GOOD,
        DARK_BAD,
        LAMP_GOOD,
        LAMP_BAD,
        LAMP_NAMED,
        LAMP_ENDED,
        CALIBRATED;

        boolean isBad() {
            return this == DARK_BAD || this == LAMP_BAD;
        }

        boolean isTrust() {
            return this == DARK_GOOD || this == LAMP_GOOD || this == CALIBRATED;
        }
    }

    /**
     * Whether a good check says that a drop has done no harm. A dark zero tells nothing of how strongly a meter shows light:
     * where a meter had a reference lamp before it fell, only that lamp answers.
     */
    boolean clears(Instant dropped, boolean hadLamp) {
        return hadLamp
                ? kind == Kind.LAMP_GOOD
                        && lampSince.filter(since -> !since.isAfter(dropped)).isPresent()
                : kind == Kind.DARK_GOOD;
    }
}
