package dapple.light.design;

/** What is done with a lamp for a rig. */
public enum Deed {
    /** It stays where and as it hangs. */
    KEPT,
    /** It is moved or turned. */
    MOVED,
    /** It is taken from stock and hung. */
    HUNG,
    /** It is bought and hung. */
    BOUGHT;

    /** Bought and hung are two things to do. */
    int changes() {
        return switch (this) {
            case KEPT -> 0;
            case MOVED, HUNG -> 1;
            case BOUGHT -> 2;
        };
    }
}
