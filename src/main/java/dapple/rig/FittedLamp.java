package dapple.rig;

import dapple.lamp.LampClass;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A lamp that hung in an enclosure over [from, to), as histories need it.
 *
 * @param timer when it burnt; empty: not known
 * @param begunBy the change of the rig that began it
 * @param endedBy the change that ended it; empty while it hangs so
 */
public record FittedLamp(
        long enclosureId,
        String tag,
        LampClass lampClass,
        String place,
        Optional<LampTimer> timer,
        Instant from,
        Optional<Instant> to,
        long begunBy,
        Optional<Long> endedBy) {

    /** Of the columns of a fitting, its lamp and its model, in the order in which the query names them. */
    FittedLamp(
            long enclosureId,
            String tag,
            LampClass lampClass,
            String place,
            @Nullable StoredTimer timer,
            Instant from,
            @Nullable Instant to,
            long begunBy,
            @Nullable Long endedBy) {
        this(
                enclosureId,
                tag,
                lampClass,
                place,
                Optional.ofNullable(timer).flatMap(StoredTimer::timer),
                from,
                Optional.ofNullable(to),
                begunBy,
                Optional.ofNullable(endedBy));
    }
}
