package dapple.lamp;

import java.time.Instant;
import java.util.Optional;

/** A lamp as those see it who keep it, with the version that they change. */
public record LampDetails(
        long id, long version, NewLamp state, Optional<Instant> retiredAt, Optional<RetiredFor> retiredFor) {

    static LampDetails of(Lamp lamp) {
        return new LampDetails(lamp.id(), lamp.version(), lamp.state(), lamp.retiredAt(), lamp.retiredFor());
    }

    public boolean isInUse() {
        return retiredAt.isEmpty();
    }
}
