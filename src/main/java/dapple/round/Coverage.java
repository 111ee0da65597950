package dapple.round;

import java.util.List;

/**
 * How the walks of a round went of late.
 *
 * @param walks newest first
 */
record Coverage(List<WalkFacts> walks) {
    public long done() {
        return count(WalkState.DONE);
    }

    /** Not walked, with a reason. */
    public long excused() {
        return count(WalkState.NOT_WALKED);
    }

    /** Neither done nor excused when the next was due, or now, after their day. */
    public long missed() {
        return count(WalkState.MISSED) + count(WalkState.OVERDUE);
    }

    /** Walks whose day is over: those that were done, excused or missed. */
    public long due() {
        return done() + excused() + missed();
    }

    private long count(WalkState state) {
        return walks.stream().filter(walk -> walk.state() == state).count();
    }
}
