package dapple.copying;

/** Which lamps hang in the copies of an enclosure: one lamp cannot hang twice. */
enum LampsOfCopies {
    /** Lamps of the same models that have not burnt yet. */
    NEW,
    /** Lamps of the same models that have burnt as long as the form says. */
    USED,
    /** None yet: they are planned at the desk, by their models. */
    LATER;

    boolean hang() {
        return this != LATER;
    }
}
