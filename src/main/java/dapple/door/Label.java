package dapple.door;

/**
 * What stands on the label of a door.
 *
 * @param address what a phone opens that scans it
 */
record Label(String enclosure, String room, DoorCode code, String address) {}
