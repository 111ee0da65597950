package dapple.enclosure;

/** What is said of a room when it is entered or changed. */
record RoomChange(String name, int walkingOrder) {}
