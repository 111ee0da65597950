package dapple.commissioning;

/** A rig that is not accepted, and why. */
class RefusedAcceptance extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final Reason reason;

    RefusedAcceptance(Reason reason) {
        super("the rig is not accepted: " + reason);
        this.reason = reason;
    }

    Reason reason() {
        return reason;
    }

    enum Reason {
        /** Model and meter disagree, or too little was read. */
        NOT_AGREEING,
        /** A lamp has radiation shorter than the sun's: it is not used. */
        LAMP_FAULT,
        /** A reading is over a ceiling: harm is not accepted. */
        OVER_CEILING,
        /** Who took all the readings does not accept them. */
        OWN_READINGS
    }
}
