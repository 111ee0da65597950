package dapple.enclosure;

import dapple.site.ConflictException;

/** Another thing of the same kind has this name or code already. */
class TakenException extends ConflictException {
    private static final long serialVersionUID = 1;

    TakenException(String what) {
        super(what);
    }
}
