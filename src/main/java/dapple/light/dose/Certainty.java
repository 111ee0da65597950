package dapple.light.dose;

/** How the UV index of a day is known, at the basking place and in shade alike; surest first. */
public enum Certainty {
    PLANNED_OFF,
    MEASURED,
    CARRIED,
    UNKNOWN
}
