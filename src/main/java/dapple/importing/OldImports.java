package dapple.importing;

import dapple.site.HourPassed;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Imports that nobody has gone on with: their files are not kept for ever. */
@Component
class OldImports {
    static final Duration KEPT = Duration.ofDays(7);

    private final Runs runs;
    private final Sent sent;
    private final Clock clock;

    OldImports(Runs runs, Sent sent, Clock clock) {
        this.runs = runs;
        this.sent = sent;
        this.clock = clock;
    }

    /** Deletes the files that have been kept for long enough, and ends their imports. */
    @EventListener(HourPassed.class)
    void end() {
        Instant now = clock.instant();
        sent.deleteOlderThan(now.minus(KEPT));
        runs.expire(now.minus(KEPT), now);
    }
}
