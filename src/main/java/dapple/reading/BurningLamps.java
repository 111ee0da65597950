package dapple.reading;

import dapple.people.SignedIn;
import dapple.rig.Rigs;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Component;

/** Knows which lamps were warm when something was read. */
@Component
class BurningLamps {
    private static final Duration MOMENT = Duration.ofNanos(1_000);

    private final Rigs rigs;

    BurningLamps(Rigs rigs) {
        this.rigs = rigs;
    }

    /** Around the readings of one visit. */
    Burning around(SignedIn me, long enclosureId, Collection<Instant> taken) {
        Duration warmUp = me.settings().warmUp();
        return taken.isEmpty()
                ? new Burning(List.of(), warmUp, me.zone())
                : new Burning(
                        rigs.lamps(
                                me.siteId(),
                                List.of(enclosureId),
                                first(taken).minus(warmUp),
                                last(taken).plus(MOMENT)),
                        warmUp,
                        me.zone());
    }

    private static Instant first(Collection<Instant> taken) {
        return taken.stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    private static Instant last(Collection<Instant> taken) {
        return taken.stream().max(Comparator.naturalOrder()).orElseThrow();
    }
}
