package dapple.enclosure;

/** It was said anew whom a point of an enclosure serves, whenever what was read there was read. */
public record PointServesChanged(long siteId, long enclosureId) {}
