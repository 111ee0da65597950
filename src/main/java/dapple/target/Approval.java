package dapple.target;

import dapple.species.UvZone;
import java.util.List;
import java.util.Optional;

/**
 * A target that a person approves for a species, and why.
 *
 * @param isForEarlierReadings whether it counts for readings taken before its approval too; a first version alone may
 */
public record Approval(
        long speciesId,
        UvZone zone,
        List<SourcedLimit> limits,
        Optional<Photoperiod> photoperiod,
        long personId,
        String reason,
        boolean isForEarlierReadings) {
    /** Without a photoperiod, from its approval on. */
    public Approval(long speciesId, UvZone zone, List<SourcedLimit> limits, long personId, String reason) {
        this(speciesId, zone, limits, Optional.empty(), personId, reason);
    }

    /** From its approval on. */
    public Approval(
            long speciesId,
            UvZone zone,
            List<SourcedLimit> limits,
            Optional<Photoperiod> photoperiod,
            long personId,
            String reason) {
        this(speciesId, zone, limits, photoperiod, personId, reason, false);
    }

    /** The same, for readings taken before its approval too or not. */
    public Approval forEarlierReadings(boolean isForThem) {
        return new Approval(speciesId, zone, limits, photoperiod, personId, reason, isForThem);
    }
}
