package dapple.site;

/** Which of two is meant when the clocks go back and a local time comes twice. */
public enum Occurrence {
    UNSAID,
    FIRST,
    SECOND
}
