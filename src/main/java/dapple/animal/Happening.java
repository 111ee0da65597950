package dapple.animal;

/** What can happen to a record of an animal or a group. */
public enum Happening {
    /** A group is entered with its first count. */
    ENTERED,
    BIRTH,
    DEATH,
    /** Somebody has counted: the count is set. */
    RECOUNT,
    /** One or more have left this group for a record of their own. */
    SPLIT_OFF,
    /** This record begins with what has left a group. */
    SPLIT_FROM,
    /** This record has joined a group and ends. */
    JOINED,
    /** Another record has joined this group. */
    TAKEN_IN,
    /** To another collection. */
    TRANSFER,
    /** To the wild. */
    RELEASE,
    /** The record is opened again. */
    RETURNED;

    /** Whether it may leave a record without animals, which closes it. */
    boolean mayEnd() {
        return switch (this) {
            case DEATH, TRANSFER, RELEASE, JOINED, SPLIT_OFF -> true;
            case ENTERED, BIRTH, RECOUNT, SPLIT_FROM, TAKEN_IN, RETURNED -> false;
        };
    }

    /** Whether it may fill a record that is without animals. */
    boolean mayBegin() {
        return this == ENTERED || this == SPLIT_FROM || this == RETURNED;
    }
}
