package dapple.rig;

import dapple.site.ConflictException;
import java.time.Instant;
import java.util.Optional;

/** A change contradicts what is on record. */
public class RigRefusedException extends ConflictException {
    private static final long serialVersionUID = 1;

    private final Reason reason;
    private final String where;
    private final transient Optional<Instant> when;

    RigRefusedException(Reason reason, Instant when) {
        this(reason, "", Optional.of(when));
    }

    RigRefusedException(Reason reason) {
        this(reason, "", Optional.empty());
    }

    RigRefusedException(Reason reason, String where, Optional<Instant> when) {
        super("the rig cannot be changed so: " + reason);
        this.reason = reason;
        this.where = where;
        this.when = when;
    }

    public Reason reason() {
        return reason;
    }

    /** The code of the enclosure that the reason speaks of, or nothing. */
    public String where() {
        return where;
    }

    /** Since when, or when, what the reason says. */
    public Optional<Instant> when() {
        return when;
    }

    /** What stands against a change. */
    public enum Reason {
        /** The lamp hangs somewhere, since an instant. */
        LAMP_HANGS,
        /** The lamp hung somewhere until an instant after the change. */
        LAMP_HUNG,
        /** The lamp was fitted somewhere at an instant after the change. */
        LAMP_FITTED_LATER,
        LAMP_RETIRED,
        /** The lamp that is to come is the one that goes. */
        LAMP_UNCHANGED,
        ENCLOSURE_OUT_OF_USE,
        /** The part has changed at an instant after this change, or at the same. */
        CHANGED_LATER,
        /** The part is gone since an instant. */
        PART_ENDED,
        /** There is a rig already, so that nothing is set up first. */
        NOT_FIRST,
        IN_FUTURE
    }
}
