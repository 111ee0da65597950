package dapple.review;

/** A decision that is not taken, and why. */
public class RefusedDecision extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final Reason reason;

    RefusedDecision(Reason reason) {
        super("the decision is refused: " + reason);
        this.reason = reason;
    }

    Reason reason() {
        return reason;
    }

    enum Reason {
        /** Harm is not accepted: it ends, and a reading shows it. */
        OVER_CEILING,
        /** Who took the reading does not decide that it may stand. */
        OWN_READING
    }
}
