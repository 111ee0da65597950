package dapple.agreement;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * For which sites there is something to compute: when a round of readings is over, at the latest an hour after it began, and
 * once every night.
 */
final class Waiting {
    static final Duration QUIET = Duration.ofMinutes(10);
    static final Duration LONGEST = Duration.ofHours(1);
    static final LocalTime NIGHT = LocalTime.of(3, 0);

    private final Map<Long, Noted> noted = new HashMap<>();
    private final Map<Long, LocalDate> nights = new HashMap<>();

    private record Noted(Instant first, Instant last) {
        boolean isDue(Instant now) {
            return !now.isBefore(last.plus(QUIET)) || !now.isBefore(first.plus(LONGEST));
        }
    }

    /** Something has come in. */
    synchronized void note(long siteId, Instant at) {
        noted.merge(siteId, new Noted(at, at), (before, newer) -> new Noted(before.first(), at));
    }

    /** Whether a site is due; if so, it no longer waits. A site that was never asked for is due at once. */
    synchronized boolean take(long siteId, ZoneId zone, Instant now) {
        ZonedDateTime here = now.atZone(zone);
        LocalDate night =
                here.toLocalTime().isBefore(NIGHT) ? here.toLocalDate().minusDays(1) : here.toLocalDate();
        boolean isNewNight = isBefore(nights.get(siteId), night);
        boolean isDue = isNewNight
                || Optional.ofNullable(noted.get(siteId))
                        .filter(one -> one.isDue(now))
                        .isPresent();
        if (isDue) {
            nights.put(siteId, night);
            noted.remove(siteId);
        }
        return isDue;
    }

    private static boolean isBefore(@Nullable LocalDate last, LocalDate night) {
        return last == null || last.isBefore(night);
    }
}
