package dapple.lamp;

/** Why a lamp left use. */
public enum RetiredFor {
    BROKEN,
    WORN_OUT,
    FAULTY,
    GIVEN_AWAY,
    LOST
}
