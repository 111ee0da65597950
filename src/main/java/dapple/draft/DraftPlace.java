package dapple.draft;

/** The enclosure of a site that drafts are for. */
public record DraftPlace(long siteId, long enclosureId) {}
