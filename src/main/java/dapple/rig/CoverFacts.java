package dapple.rig;

/** A cover over its time. */
public record CoverFacts(long id, long enclosureId, Cover cover, Span span) {}
