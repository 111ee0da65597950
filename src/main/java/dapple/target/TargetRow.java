package dapple.target;

import dapple.evidence.EvidenceFacts;
import dapple.species.SpeciesFacts;
import java.util.Optional;

/** A species with its newest target and the evidence that is chosen for its zone. */
public record TargetRow(SpeciesFacts species, Optional<VersionDetails> version, Optional<EvidenceFacts> chosen) {
    /** Whether the chosen evidence names another zone or method than the target. */
    public boolean isBehindEvidence() {
        return version.isPresent()
                && chosen.isPresent()
                && !version.get().target().zone().equals(chosen.get().zone());
    }
}
