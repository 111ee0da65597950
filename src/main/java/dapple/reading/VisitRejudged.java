package dapple.reading;

/** A late fact had the readings of a visit judged anew. */
public record VisitRejudged(long siteId, long enclosureId, long visitId) {}
