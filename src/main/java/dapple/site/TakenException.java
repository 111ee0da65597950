package dapple.site;

/** Another thing of the same kind has this name or code already. */
public class TakenException extends ConflictException {
    private static final long serialVersionUID = 1;

    public TakenException(String what) {
        super(what);
    }
}
