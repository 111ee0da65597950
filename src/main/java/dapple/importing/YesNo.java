package dapple.importing;

/** Whether something is wanted. */
enum YesNo {
    YES,
    NO
}
