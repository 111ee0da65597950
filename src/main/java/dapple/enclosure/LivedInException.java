package dapple.enclosure;

import dapple.site.ConflictException;

/** An enclosure cannot leave use while somebody lives there. */
public class LivedInException extends ConflictException {
    private static final long serialVersionUID = 1;

    public LivedInException() {
        super("an enclosure cannot leave use while an animal lives there");
    }
}
