package dapple.animal;

/** Sex as far as it is known; a mixed group is unknown. */
public enum Sex {
    UNKNOWN,
    MALE,
    FEMALE
}
