package dapple.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's clock: it stands in the past while the demo's story is recorded as it happened, then tells the time. */
@Component
@Profile("demo")
class DemoClock extends Clock {
    private final Clock real = Clock.tick(Clock.systemUTC(), Duration.ofNanos(1000));
    private volatile boolean telling = true;
    private volatile Instant past = Instant.EPOCH;

    @Override
    public Instant instant() {
        return telling ? real.instant() : past;
    }

    /** Runs a story that sets the time as it goes, then tells the real time again. */
    void whileStanding(Consumer<Consumer<Instant>> story) {
        telling = false;
        try {
            story.accept(instant -> past = instant);
        } finally {
            telling = true;
        }
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return zone.equals(getZone()) ? this : new Zoned(zone);
    }

    private final class Zoned extends Clock {
        private final ZoneId zone;

        Zoned(ZoneId zone) {
            this.zone = zone;
        }

        @Override
        public ZoneId getZone() {
            return zone;
        }

        @Override
        public Clock withZone(ZoneId other) {
            return DemoClock.this.withZone(other);
        }

        @Override
        public Instant instant() {
            return DemoClock.this.instant();
        }
    }
}
