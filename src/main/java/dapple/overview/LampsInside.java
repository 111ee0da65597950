package dapple.overview;

import dapple.people.SignedIn;
import dapple.reading.Readings;
import dapple.rig.BurnHours;
import dapple.rig.BurnHours.Burnt;
import dapple.rig.Rig;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Finds how long the lamps of a rig have hung and burnt, and whether they have been read since. */
@Component
class LampsInside {
    private final BurnHours burnHours;
    private final Readings readings;

    LampsInside(BurnHours burnHours, Readings readings) {
        this.burnHours = burnHours;
        this.readings = readings;
    }

    List<LampShown> of(SignedIn me, Rig rig, Instant now) {
        Map<Long, Burnt> burnt = burnHours.of(me.siteId(), rig, now, me.zone());
        List<Instant> read = burnt.values().stream()
                .map(Burnt::since)
                .min(Instant::compareTo)
                .map(since -> readings.timesIn(me.siteId(), rig.enclosureId(), since, UnreadLamps.LOOKED_AT))
                .orElse(List.of());
        UnreadLamps unread = new UnreadLamps(read, me.settings().warmUp(), me.zone());
        return rig.fittings().stream()
                .map(fitting -> LampShown.of(
                        fitting, Optional.ofNullable(burnt.get(fitting.lamp().id())), unread, now))
                .toList();
    }
}
