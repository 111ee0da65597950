package dapple.evidence;

import dapple.site.SourceMark;
import dapple.species.UvZone;

/** What a person puts on record about the zone of a species. */
public record NewEvidence(long speciesId, UvZone zone, SourceMark mark, String source, long personId) {}
