package dapple.round;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One thing to read on a round, of what the queries name.
 *
 * @param walk what was said of a walk of the round; empty: nothing of the newest
 * @param offSince since when the lamps are off on purpose
 * @param pointId empty: the enclosure has no point in use
 * @param isMeasurable whether the site has a meter for it in use
 */
record StepRow(
        RoundPlan plan,
        Optional<RoundWalk> walk,
        Optional<String> name,
        StopPlace place,
        Optional<Instant> retiredAt,
        Optional<Instant> offSince,
        Optional<Long> pointId,
        String point,
        Optional<Quantity> quantity,
        boolean isMeasurable,
        Optional<Instant> readAt,
        Optional<Instant> notedAt) {

    StepRow(
            RoundPlan plan,
            @Nullable RoundWalk walk,
            @Nullable String name,
            StopPlace place,
            @Nullable Instant retiredAt,
            @Nullable Instant offSince,
            @Nullable Long pointId,
            @Nullable String point,
            @Nullable Quantity quantity,
            @Nullable Long meters,
            @Nullable Instant readAt,
            @Nullable Instant notedAt) {
        this(
                plan,
                Optional.ofNullable(walk),
                Optional.ofNullable(name),
                place,
                Optional.ofNullable(retiredAt),
                Optional.ofNullable(offSince),
                Optional.ofNullable(pointId),
                point == null ? "" : point,
                Optional.ofNullable(quantity),
                meters != null && meters > 0,
                Optional.ofNullable(readAt),
                Optional.ofNullable(notedAt));
    }

    /** The same with the lamps off on purpose at other times. */
    StepRow off(Optional<Instant> since) {
        return new StepRow(
                plan, walk, name, place, retiredAt, since, pointId, point, quantity, isMeasurable, readAt, notedAt);
    }

    /** The enclosure alone. */
    StepRow withoutPoint() {
        return new StepRow(
                plan,
                walk,
                name,
                place,
                retiredAt,
                offSince,
                Optional.empty(),
                "",
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty());
    }
}
