package dapple.animal;

/** Why something that was asked contradicts what is on record of an animal. */
public enum Refusal {
    OUT_OF_USE,
    MOVED_LATER,
    /** No longer where the one who asks took it to be. */
    NOT_THERE,
    ALREADY_THERE,
    /** Its record is closed. */
    HAS_ENDED,
    /** Its record holds no animal at that time. */
    NOT_HERE_THEN,
    /** There were not so many, or later counts would not hold. */
    COUNT,
    NO_GROUP,
    OTHER_SPECIES,
    SAME_RECORD,
    /** Its record is open, or its animals live on under other numbers. */
    CANNOT_RETURN,
    WITHDRAWN,
    NOT_NEWEST,
    /** A vet's order is in force for what would join a group. */
    UNDER_ORDER
}
