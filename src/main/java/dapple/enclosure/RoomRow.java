package dapple.enclosure;

import java.util.List;

/** A room with its enclosures, those out of use among them. */
public record RoomRow(RoomFacts room, List<EnclosureFacts> enclosures) {}
