package dapple.review;

import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.order.OrderFacts;
import dapple.reading.JudgedReading;
import dapple.target.Target;
import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** That a point has not been read since what is needed there changed: what was read before says nothing of it. */
public record Unread(Why why, Instant since) {
    private static final Set<State> AMISS = EnumSet.of(State.NO_SHADE, State.TOO_STRONG, State.TOO_WEAK);

    /** The newest of the orders that have come into force since the UV index was read; of anything else none speaks. */
    public static Optional<Unread> ofOrders(JudgedReading reading, Stream<OrderFacts> orders) {
        return orders.filter(order -> reading.quantity() == Quantity.UV_INDEX)
                .map(OrderFacts::from)
                .filter(from -> from.isAfter(reading.takenAt()))
                .max(Comparator.naturalOrder())
                .map(from -> new Unread(Why.ORDER, from));
    }

    /** A target that has come into force since a reading was judged by another, or by none. */
    public static Optional<Unread> ofTarget(JudgedReading reading, Optional<Target> newest) {
        return newest.filter(target -> !reading.targetVersionId().equals(Optional.of(target.id())))
                .map(Target::inForceFrom)
                .filter(from -> from.isAfter(reading.takenAt()))
                .map(from -> new Unread(Why.TARGET, from));
    }

    /** That the light changed since something was read. */
    public static Optional<Unread> ofRig(JudgedReading reading, Optional<Instant> lightChange) {
        return lightChange.filter(at -> at.isAfter(reading.takenAt())).map(at -> new Unread(Why.RIG, at));
    }

    /**
     * Whether a reading says nothing any more. One over the ceiling always does; where the target or the rig
     * changed, or another species moved in, what is amiss stays so until the point is read again.
     */
    public boolean silences(JudgedReading reading) {
        return reading.state()
                .map(state -> state != State.OVER_CEILING && (why == Why.ORDER || !AMISS.contains(state)))
                .orElse(true);
    }

    /** What changed. */
    public enum Why {
        /** A vet's order came into force. */
        ORDER,
        /** A newer version of the target was approved. */
        TARGET,
        /** Another species moved in. */
        ARRIVAL,
        /** The rig gives other light. */
        RIG
    }
}
