package dapple.practice;

import java.util.Optional;

/** What can happen to a meter. */
public enum MeterEventKind {
    DROPPED,
    LOST,
    FOUND,
    /** Somebody has taken it along. */
    BORROWED,
    BROKEN,
    /** It is in its place and works again. */
    BACK;

    /** Whether it takes the meter out of everybody's hands until it is found or back. */
    boolean isAbsence() {
        return this == LOST || this == BORROWED || this == BROKEN;
    }

    boolean isReturn() {
        return this == FOUND || this == BACK;
    }

    /** What is said at entry while this is the newest of its kind. */
    Optional<MeterNotice.Kind> notice() {
        return switch (this) {
            case LOST -> Optional.of(MeterNotice.Kind.LOST);
            case BORROWED -> Optional.of(MeterNotice.Kind.LENT);
            case BROKEN -> Optional.of(MeterNotice.Kind.BROKEN);
            case DROPPED, FOUND, BACK -> Optional.empty();
        };
    }
}
