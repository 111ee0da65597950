package dapple.importing.sheet;

/** What is wrong with a row. */
public enum Reason {
    NOT_A_NUMBER,
    /** A separator that may be the decimal one or that of thousands. */
    NUMBER_AMBIGUOUS,
    NOT_WHOLE,
    OUT_OF_RANGE,
    UNIT_UNKNOWN,
    UNIT_NEEDED,
    NOT_A_DAY,
    /** The third of April or the fourth of March. */
    DAY_AMBIGUOUS,
    NOT_A_TIME,
    /** The clocks go forward over it. */
    TIME_SKIPPED,
    /** The clocks go back over it. */
    TIME_TWICE,
    IN_FUTURE,
    YEAR_IMPOSSIBLE,
    TOO_LONG,
    NOT_ONE_LINE,
    LETTERS_LOST,
    WORD_UNKNOWN,
    ROW_TOO_LONG,
    MISSING,
    ENCLOSURE_OUT_OF_USE,
    ENCLOSURE_LEFT_OUT,
    POINT_ROLE_NEEDED,
    POINT_OUT_OF_USE,
    QUANTITY_NEEDED,
    SPECIES_NEAR,
    SPECIES_NO_NAME,
    PEOPLE_NOT_ALLOWED,
    SIGN_IN_NAME_WRONG,

    LAMP_UNKNOWN,
    LAMP_HANGS,
    RIG_CHANGED_LATER,
    MODEL_UNKNOWN,
    TAKEN
}
