package dapple.animal;

/** How a form asks for the reach of an animal. */
enum ReachKind {
    CLIMBS,
    GROUND
}
