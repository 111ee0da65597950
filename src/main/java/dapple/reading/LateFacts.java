package dapple.reading;

import dapple.enclosure.PlannedOffChanged;
import dapple.meter.CalibrationRecorded;
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
    void plannedOff(PlannedOffChanged changed) {
        rejudging.enclosure(changed.siteId(), changed.enclosureId(), changed.from());
    }
}
