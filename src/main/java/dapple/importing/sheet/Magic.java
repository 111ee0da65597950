package dapple.importing.sheet;

/** What the first bytes of a file tell of its kind. */
final class Magic {
    static final int LENGTH = 4;

    private Magic() {}

    /** Whether it is an archive in the ZIP format, an empty one too. */
    static boolean isZip(byte[] head) {
        return head.length >= LENGTH
                && head[0] == 'P'
                && head[1] == 'K'
                && ((head[2] == 3 && head[3] == 4) || (head[2] == 5 && head[3] == 6));
    }
}
