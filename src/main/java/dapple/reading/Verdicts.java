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
        judging.judge(visit).stream()
                .map(Read::of)
                .distinct()
                .sorted(Read.ORDER)
                .forEach(this::refresh);
    }

    /** The same after a reading of the visit has gone. */
    void renewWithout(Reading gone) {
        renew(gone.visit());
        refresh(Read.of(gone));
    }

    private void refresh(Read read) {
        latest.refresh(read.siteId(), read.pointId(), read.quantity());
    }
}
