package dapple.evidence;

import dapple.site.SourceMark;
import dapple.species.UvZone;
import java.time.Instant;

/** What one source says of the zone of a species, and who put it on record. */
public record EvidenceFacts(
        long id, long speciesId, UvZone zone, SourceMark mark, String source, Instant addedAt, long addedBy) {}
