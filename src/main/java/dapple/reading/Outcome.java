package dapple.reading;

/** Why a point was not read. */
public enum Outcome {
    LAMP_OUT,
    COULD_NOT_REACH,
    ANIMAL_IN_THE_WAY
}
