package dapple.enclosure;

/** What is said of a measuring point when it is entered or changed, and where it comes in a visit. */
record PointChange(NewPoint point, int walkingOrder) {}
