package dapple.lamp;

import dapple.site.ConflictException;

/** A lamp cannot leave use while it hangs in an enclosure. */
public class StillFittedException extends ConflictException {
    private static final long serialVersionUID = 1;

    public StillFittedException() {
        super("a lamp cannot leave use while it hangs in an enclosure");
    }
}
