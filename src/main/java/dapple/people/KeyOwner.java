package dapple.people;

/** A person at a site, who has keys for programs. */
public record KeyOwner(long siteId, long personId) {}
