package dapple.round;

import dapple.light.quantity.Quantity;
import dapple.reading.Outcome;
import dapple.reading.StepTaken;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** How far a walk is, by whatever was read or noted, by whom it may have been. */
sealed interface Progress {
    RoundStep step(StepRow row, Quantity quantity);

    /** By the newest reading and the last reason of each step, from an instant on. */
    record Newest(Instant from) implements Progress {
        @Override
        public RoundStep step(StepRow row, Quantity quantity) {
            boolean isDone = row.readAt().filter(this::counts).isPresent()
                    || row.notedAt().filter(this::counts).isPresent();
            return new RoundStep(row.pointId().orElseThrow(), row.point(), quantity, isDone, Optional.empty());
        }

        private boolean counts(Instant at) {
            return !at.isBefore(from);
        }
    }

    /** By everything that was read or noted in the time of the walk, oldest first. */
    record Taken(List<StepTaken> taken) implements Progress {
        @Override
        public RoundStep step(StepRow row, Quantity quantity) {
            long point = row.pointId().orElseThrow();
            List<StepTaken> here =
                    taken.stream().filter(one -> one.isOf(point, quantity)).toList();
            boolean isRead = here.stream().anyMatch(Predicate.not(StepTaken::isUnread));
            Optional<Outcome> outcome = isRead
                    ? Optional.empty()
                    : here.stream().flatMap(one -> one.outcome().stream()).reduce((earlier, later) -> later);
            return new RoundStep(point, row.point(), quantity, !here.isEmpty(), outcome);
        }
    }
}
