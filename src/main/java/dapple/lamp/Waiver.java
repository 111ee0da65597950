package dapple.lamp;

import jakarta.persistence.Embeddable;
import java.time.Instant;

/**
 * Somebody answers for using an ultraviolet lamp whose spectrum is not known.
 *
 * @param waivedByName the name under which it was signed
 */
@Embeddable
record Waiver(String waiverReason, Instant waivedAt, long waivedBy, String waivedByName) {
    SpectrumEvidence evidence() {
        return new SpectrumEvidence.Waived(waivedByName, waiverReason, waivedAt);
    }
}
