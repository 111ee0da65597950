package dapple.reading;

import java.util.UUID;

/**
 * Where an entry belongs.
 *
 * @param visitKey made where the visit is walked; the first entry with it begins the visit
 */
public record VisitPlace(UUID visitKey, long enclosureId, long pointId) {}
