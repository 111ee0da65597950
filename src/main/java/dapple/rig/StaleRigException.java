package dapple.rig;

import dapple.site.ConflictException;

/** Somebody has changed the rig since the form was made. */
public class StaleRigException extends ConflictException {
    private static final long serialVersionUID = 1;

    StaleRigException() {
        super("the rig has changed since the form was made");
    }
}
