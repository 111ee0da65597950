package dapple.archive;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;

/** When a backup is due: at ten past three at night where the machine stands, or as soon as it runs again after that. */
final class Night {
    private static final LocalTime HOUR = LocalTime.of(3, 10);
    private static final Duration BEFORE_TRYING_AGAIN = Duration.ofHours(1);

    private Night() {}

    /**
     * Whether one is due.
     *
     * @param newest when the newest backup was made
     * @param tried when one was last tried since the start
     */
    static boolean isDue(Instant now, ZoneId zone, Optional<Instant> newest, Optional<Instant> tried) {
        boolean mayTry =
                tried.filter(at -> at.plus(BEFORE_TRYING_AGAIN).isAfter(now)).isEmpty();
        return mayTry && newest.filter(at -> !at.isBefore(lastHour(now, zone))).isEmpty();
    }

    private static Instant lastHour(Instant now, ZoneId zone) {
        ZonedDateTime here = now.atZone(zone);
        Instant today = here.with(HOUR).toInstant();
        return today.isAfter(now) ? here.minusDays(1).with(HOUR).toInstant() : today;
    }
}
