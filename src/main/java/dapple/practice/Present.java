package dapple.practice;

import dapple.people.SignedIn;
import dapple.site.When;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** What every form of this package takes from who sends it, and when. */
@Component
class Present {
    private final Clock clock;

    Present(Clock clock) {
        this.clock = clock;
    }

    /** The present minute in the time of the site. */
    LocalDateTime minute(SignedIn me) {
        return LocalDateTime.ofInstant(clock.instant(), me.zone()).truncatedTo(ChronoUnit.MINUTES);
    }

    When when(SignedIn me) {
        return When.until(clock.instant(), me.zone());
    }

    Entered entered(SignedIn me, long meterId, UUID key) {
        Instant now = clock.instant();
        return new Entered(me.siteId(), meterId, me.personId(), now, key);
    }
}
