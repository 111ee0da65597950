package dapple.round;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** An instant as the day of a site that it is in. */
record SiteDay(Instant now, ZoneId zone) {
    LocalDate today() {
        return LocalDate.ofInstant(now, zone);
    }

    /** When a day begins there. */
    Instant startOf(LocalDate day) {
        return day.atStartOfDay(zone).toInstant();
    }

    /** After everything that can have been read by now. */
    Instant tomorrow() {
        return startOf(today().plusDays(1));
    }
}
