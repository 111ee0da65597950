package dapple.enclosure;

/** A room as those see it who arrange it, with the version that they change. */
public record RoomFacts(long id, long version, String name, int walkingOrder) {}
