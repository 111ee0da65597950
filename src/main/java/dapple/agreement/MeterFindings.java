package dapple.agreement;

import dapple.meter.CalibrationInForce;
import dapple.meter.CalibrationRecorded;
import dapple.meter.Meters;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What was told of meters: told once, taken back where later readings do not bear it out, settled by people. */
@Service
public class MeterFindings {
    private final AgreementFindingRepository findings;
    private final Meters meters;
    private final Clock clock;

    MeterFindings(AgreementFindingRepository findings, Meters meters, Clock clock) {
        this.findings = findings;
        this.meters = meters;
        this.clock = clock;
    }

    /** What nobody has dealt with, told longest ago first. */
    @Transactional(readOnly = true)
    public List<FindingFacts> open(long siteId) {
        return findings.open(siteId).stream().map(AgreementFinding::facts).toList();
    }

    /** All that was ever told, newest first. */
    @Transactional(readOnly = true)
    public List<FindingFacts> all(long siteId) {
        return findings.all(siteId).stream().map(AgreementFinding::facts).toList();
    }

    @Transactional(readOnly = true)
    public FindingFacts get(long siteId, long findingId) {
        return findings.findAtSite(siteId, findingId)
                .map(AgreementFinding::facts)
                .orElseThrow(NotFoundException::new);
    }

    /**
     * Settles a finding: it is no longer told, and stays on record.
     *
     * @throws ConflictException if it was settled or taken back before
     */
    @Transactional
    public void settle(long siteId, long findingId, long personId, String reason) {
        AgreementFinding finding = findings.lockAtSite(siteId, findingId).orElseThrow(NotFoundException::new);
        finding.settle(clock.instant(), personId, reason);
        findings.saveAndFlush(finding);
    }

    /** A meter with a new factor is another one: what was told of the old one is settled. */
    @EventListener
    @Transactional
    public void calibrated(CalibrationRecorded recorded) {
        Instant now = clock.instant();
        Optional<Long> newest = meters.calibrationAt(recorded.meterId(), now).map(CalibrationInForce::id);
        findings.lockOpen(recorded.siteId(), recorded.meterId()).stream()
                .filter(finding -> !finding.isSince(newest))
                .forEach(finding -> {
                    finding.settleByCalibration(now);
                    findings.saveAndFlush(finding);
                });
    }
}
