package dapple.overview;

import dapple.rig.BurnHours.Burnt;
import dapple.rig.FittingFacts;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A lamp in an enclosure as its page shows it.
 *
 * @param since when it was fitted there
 * @param burnHours empty: not known
 * @param commissioning whether it has not been read since it was fitted, warm
 */
record LampShown(FittingFacts fitting, Instant since, long days, Optional<Double> burnHours, boolean commissioning) {
    static LampShown of(FittingFacts fitting, Optional<Burnt> burnt, UnreadLamps unread, Instant now) {
        Instant since = burnt.map(Burnt::since).orElse(fitting.span().from());
        return new LampShown(
                fitting,
                since,
                Duration.between(since, now).toDays(),
                burnt.flatMap(Burnt::hours),
                unread.holds(fitting, since));
    }
}
