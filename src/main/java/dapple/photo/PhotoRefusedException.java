package dapple.photo;

/** A photo is not kept. */
public class PhotoRefusedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final PhotoFault fault;

    PhotoRefusedException(PhotoFault fault) {
        super(fault.name());
        this.fault = fault;
    }

    public PhotoFault fault() {
        return fault;
    }
}
