package dapple.reading;

import dapple.animal.StayChanged;
import dapple.enclosure.PlannedOffChanged;
import dapple.enclosure.PointServesChanged;
import dapple.meter.CalibrationRecorded;
import dapple.meter.UncertaintyStated;
import dapple.order.OrderChanged;
import dapple.rig.RigChanged;
import dapple.target.EarlierReadingsIncluded;
import java.time.Instant;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Facts of other features that readings rest on: each has what was read since judged anew. */
@Component
class LateFacts {
    private final Rejudging rejudging;

    LateFacts(Rejudging rejudging) {
        this.rejudging = rejudging;
    }

    @EventListener
    void calibrated(CalibrationRecorded recorded) {
        rejudging.meter(recorded.siteId(), recorded.meterId(), recorded.from());
    }

    @EventListener
    void stated(UncertaintyStated stated) {
        rejudging.meter(stated.siteId(), stated.meterId(), Instant.EPOCH);
    }

    @EventListener
    void lived(StayChanged changed) {
        rejudging.enclosure(changed.siteId(), changed.enclosureId(), changed.from());
    }

    @EventListener
    void served(PointServesChanged changed) {
        rejudging.enclosure(changed.siteId(), changed.enclosureId(), Instant.EPOCH);
    }

    @EventListener
    void ordered(OrderChanged changed) {
        rejudging.enclosure(changed.siteId(), changed.enclosureId(), changed.from());
    }

    @EventListener
    void hung(RigChanged changed) {
        rejudging.enclosure(changed.siteId(), changed.enclosureId(), changed.at());
    }

    @EventListener
    void included(EarlierReadingsIncluded included) {
        rejudging.species(included.siteId(), included.speciesId(), included.from());
    }

    @EventListener
    void plannedOff(PlannedOffChanged changed) {
        rejudging.enclosure(changed.siteId(), changed.enclosureId(), changed.from());
    }
}
