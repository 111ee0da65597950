package dapple.check;

/** What comes of a check, what asks for somebody first. */
public enum Outcome {
    FAILS,
    UNKNOWN,
    HOLDS
}
