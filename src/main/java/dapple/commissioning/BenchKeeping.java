package dapple.commissioning;

import dapple.commissioning.BenchSeries.Kept;
import dapple.lamp.LampOutput;
import dapple.lamp.Lamps;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import java.time.Clock;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what a bench series says as the lamp's own measured output, with the readings that it was fitted to. */
@Service
class BenchKeeping {
    private final BenchRepository series;
    private final Lamps lamps;
    private final Clock clock;

    BenchKeeping(BenchRepository series, Lamps lamps, Clock clock) {
        this.series = series;
        this.lamps = lamps;
        this.clock = clock;
    }

    /**
     * Keeps a series, or finds that the same entry has been kept before.
     *
     * @throws ConflictException if something else was measured of the lamp at the same instant
     */
    @Transactional
    public void keep(SignedIn me, long lampId, BenchEntry entry, LampOutput output) {
        lamps.lock(me.siteId(), lampId);
        if (series.findBySiteIdAndLampIdAndEntryKey(me.siteId(), lampId, entry.key())
                .isEmpty()) {
            long outputId = lamps.measure(me.siteId(), lampId, output, entry.at(), me.personId());
            Kept kept = new Kept(me.siteId(), lampId, outputId, me.personId(), clock.instant());
            series.saveAndFlush(new BenchSeries(kept, entry));
        }
    }
}
