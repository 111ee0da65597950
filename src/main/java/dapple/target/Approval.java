package dapple.target;

import dapple.species.UvZone;
import java.util.List;
import java.util.Optional;

/** A target that a person approves for a species, and why. */
public record Approval(
        long speciesId,
        UvZone zone,
        List<SourcedLimit> limits,
        Optional<Photoperiod> photoperiod,
        long personId,
        String reason) {
    /** Without a photoperiod. */
    public Approval(long speciesId, UvZone zone, List<SourcedLimit> limits, long personId, String reason) {
        this(speciesId, zone, limits, Optional.empty(), personId, reason);
    }
}
