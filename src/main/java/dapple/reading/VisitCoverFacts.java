package dapple.reading;

import java.time.Instant;

/** How the cover was at a visit, said when and by whom. */
public record VisitCoverFacts(CoverSaid cover, Instant at, long personId) {}
