package dapple.copying;

import dapple.site.ConflictException;

/** The enclosure is not any more as the form showed it. */
class StaleOriginalException extends ConflictException {
    private static final long serialVersionUID = 1;

    StaleOriginalException() {
        super("the enclosure has been changed since the form was made");
    }
}
