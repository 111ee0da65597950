package dapple.round;

import java.time.LocalDate;
import java.util.List;

/**
 * When a walk is due, and what day it is.
 *
 * @param isNewest whether no later walk has been due or begun since
 */
record WalkTime(LocalDate dueOn, LocalDate today, boolean isNewest) {
    WalkState state(WalkSaid said, List<Stop> stops) {
        long all = stops.stream().mapToLong(stop -> stop.steps().size()).sum();
        long done = stops.stream().mapToLong(Stop::done).sum();
        boolean isAhead = dueOn.isAfter(today) && said.begun().isEmpty();
        if (all > 0 && done == all) {
            return WalkState.DONE;
        } else if (said.excuse().isPresent()) {
            return WalkState.NOT_WALKED;
        } else if (isAhead) {
            return WalkState.AHEAD;
        } else if (all == 0) {
            return WalkState.NOTHING_TO_READ;
        }
        return open(said.begun().isPresent() || done > 0);
    }

    private WalkState open(boolean isUnderWay) {
        if (!isNewest) {
            return WalkState.MISSED;
        } else if (dueOn.isBefore(today)) {
            return WalkState.OVERDUE;
        }
        return isUnderWay ? WalkState.UNDER_WAY : WalkState.DUE;
    }
}
