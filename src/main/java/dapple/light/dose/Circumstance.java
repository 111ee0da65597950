package dapple.light.dose;

/** What an animal's light depends on for a while. */
public enum Circumstance {
    UNDER_LAMPS,
    /** Lamps off on purpose, as in winter rest: no dose, and nothing is missing. */
    PLANNED_OFF,
    /** In no enclosure that is known. */
    NOWHERE
}
