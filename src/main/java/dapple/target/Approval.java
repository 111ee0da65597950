package dapple.target;

import java.util.List;

/** A target that a person approves for a species, and why. */
public record Approval(long speciesId, UvZone zone, List<SourcedLimit> limits, long personId, String reason) {}
