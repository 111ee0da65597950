package dapple.overview;

import dapple.drawing.StripTarget;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.order.OrderFacts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the UV index was held against over [from, until).
 *
 * @param name as drawn where it begins
 */
record Held(Instant from, Instant until, Limits limits, String name) {
    /**
     * The same with an order in place of what held over its time.
     *
     * @param since when whom it is for moved in
     */
    static List<Held> under(OrderFacts order, Instant since, List<Held> held, String name) {
        Instant begin = later(order.from(), since);
        if (!begin.isBefore(order.to())) {
            return held;
        }
        if (held.isEmpty()) {
            return List.of(new Held(begin, order.to(), order.limits(Optional.empty()), name));
        }
        List<Held> split = new ArrayList<>();
        for (Held one : held) {
            one.within(Instant.MIN, begin).ifPresent(split::add);
            one.within(begin, order.to())
                    .map(part -> new Held(part.from, part.until, order.limits(Optional.of(part.limits)), name))
                    .ifPresent(split::add);
            one.within(order.to(), Instant.MAX).ifPresent(split::add);
        }
        return split;
    }

    private Optional<Held> within(Instant begin, Instant end) {
        Instant first = later(from, begin);
        Instant last = until.isBefore(end) ? until : end;
        return first.isBefore(last) ? Optional.of(new Held(first, last, limits, name)) : Optional.empty();
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    StripTarget at(PointRole role) {
        return new StripTarget(from, until, limits.at(role), limits.ceiling(), name);
    }
}
