package dapple.reading;

import org.springframework.stereotype.Component;

/** Renews what the readings of a visit are judged to be, and the table of newest readings with it. */
@Component
class Verdicts {
    private final Judging judging;
    private final LatestReadings latest;

    Verdicts(Judging judging, LatestReadings latest) {
        this.judging = judging;
        this.latest = latest;
    }

    /** In the transaction that holds the visit's lock. */
    void renew(Visit visit) {
        judging.judge(visit)
                .forEach(reading -> latest.refresh(reading.siteId(), reading.pointId(), reading.quantity()));
    }

    /** The same after a reading of the visit has gone. */
    void renewWithout(Reading gone) {
        renew(gone.visit());
        latest.refresh(gone.siteId(), gone.pointId(), gone.quantity());
    }
}
