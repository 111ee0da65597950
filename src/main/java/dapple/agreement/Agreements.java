package dapple.agreement;

import dapple.light.quantity.Quantity;
import dapple.reading.Patiently;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.time.Clock;
import java.time.Instant;
import org.springframework.stereotype.Service;

/** Holds the meters of a site against one another by all their readings, and keeps the outcome. */
@Service
public class Agreements {
    private final Sites sites;
    private final Gathering gathering;
    private final AgreementRecord record;
    private final FindingKeeping findings;
    private final Patiently patiently;
    private final Clock clock;

    Agreements(
            Sites sites,
            Gathering gathering,
            AgreementRecord record,
            FindingKeeping findings,
            Patiently patiently,
            Clock clock) {
        this.sites = sites;
        this.gathering = gathering;
        this.record = record;
        this.findings = findings;
        this.patiently = patiently;
        this.clock = clock;
    }

    /** Takes a second or so of one core for a collection read every week: for work behind the scenes. */
    public void renew(long siteId) {
        SiteFacts site = sites.get(siteId);
        Instant now = clock.instant();
        Collected collected = gathering.of(site, now);
        for (Quantity quantity : collected.readings().keySet()) {
            Computed computed = Computed.of(quantity, collected);
            patiently.run(() -> keep(siteId, computed, now));
        }
    }

    private long keep(long siteId, Computed computed, Instant now) {
        record.replace(siteId, computed, now);
        findings.keep(siteId, computed);
        return siteId;
    }
}
