package dapple.archive;

import dapple.site.SiteFacts;
import java.time.Instant;

/** Of which site a record is, and from when until before when. */
public record RecordSpan(SiteFacts site, Instant from, Instant to) {
    public RecordSpan {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("a record must end after it begins, was " + from + " to " + to);
        }
    }
}
