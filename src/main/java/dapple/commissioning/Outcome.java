package dapple.commissioning;

/** What comes of holding a rig against its readings. */
public enum Outcome {
    /** Nothing counts yet. */
    UNREAD,
    /** A lamp that was changed is seen from no point that was read. */
    UNSEEN,
    /** The model and the meter disagree. */
    DISAGREES,
    /** Everything that was read is what meter and model explain. */
    AGREES,
    /** Somebody has accepted it. */
    ACCEPTED
}
