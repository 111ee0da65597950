package dapple.review;

/** What can be decided about a finding. */
public enum DecisionKind {
    /** It stands as it is, until a day and with a reason. */
    ACCEPTED,
    /** Somebody reads again. */
    SECOND_READING,
    /** Somebody sees to it, until a day. */
    GIVEN,
    NOTE
}
