package dapple.agreement;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Takes over what a computation tells: each thing once, and back what later readings do not bear out. */
@Component
class FindingKeeping {
    /** What lies nearer to the first readings that count is not taken back: too few are before it (ours). */
    private static final Duration TOO_NEAR_THE_BEGINNING = Duration.ofDays(84);

    private final AgreementFindingRepository findings;
    private final Clock clock;

    FindingKeeping(AgreementFindingRepository findings, Clock clock) {
        this.findings = findings;
        this.clock = clock;
    }

    /** Within the transaction of the computation. */
    void keep(long siteId, Computed computed) {
        List<AgreementFinding> known = findings.lockAll(siteId, computed.quantity());
        List<Told> told = computed.told();
        known.stream().filter(AgreementFinding::isOpen).forEach(open -> renew(open, told, computed.from()));
        told.stream()
                .filter(one -> known.stream().noneMatch(old -> (old.isOpen() && old.isAbout(one)) || old.silences(one)))
                .forEach(one -> findings.saveAndFlush(new AgreementFinding(siteId, one, clock.instant())));
    }

    private void renew(AgreementFinding open, List<Told> told, Instant from) {
        Optional<Told> again = told.stream().filter(open::isAbout).findFirst();
        again.ifPresent(open::become);
        if (again.isEmpty() && !open.isOlderThan(from.plus(TOO_NEAR_THE_BEGINNING))) {
            open.takeBack(clock.instant());
        }
        findings.saveAndFlush(open);
    }
}
