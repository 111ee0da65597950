package dapple.round;

/** An enclosure and where it is. */
public record StopPlace(long enclosureId, String code, long roomId, String room) {}
