package dapple.commissioning;

import java.time.Instant;
import java.util.List;

/**
 * That somebody has accepted a rig.
 *
 * @param acceptedBy by name
 * @param ownReadings whether who accepted had taken all readings, at a site of one person
 */
public record CommissioningFacts(
        long id,
        long enclosureId,
        String reason,
        boolean ownReadings,
        Instant acceptedAt,
        String acceptedBy,
        int readings,
        List<FactorRow> factors) {
    public CommissioningFacts {
        factors = List.copyOf(factors);
    }
}
