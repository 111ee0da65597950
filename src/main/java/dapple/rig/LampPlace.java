package dapple.rig;

/**
 * Where a lamp hangs now.
 *
 * @param enclosure its code
 * @param place what its place there is called
 */
public record LampPlace(long lampId, long fittingId, long enclosureId, String enclosure, String place) {}
