package dapple.lamp;

/** Why a lamp left use. */
enum RetiredFor {
    BROKEN,
    WORN_OUT,
    FAULTY,
    GIVEN_AWAY,
    LOST
}
