package dapple.reading;

/** Why a point was not read. */
public enum Outcome {
    LAMP_OUT,
    COULD_NOT_REACH,
    ANIMAL_IN_THE_WAY,
    NO_METER,
    /** Left for another time; the UV index never is. */
    SKIPPED;

    /** Whether it says something of one quantity alone, not of the whole point. */
    boolean isOfOneQuantity() {
        return this == NO_METER || this == SKIPPED;
    }
}
