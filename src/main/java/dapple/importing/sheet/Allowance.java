package dapple.importing.sheet;

/** How many bytes may be unpacked of one file, however often its sheets are read. */
final class Allowance {
    static final long MOST_BYTES = 400L * 1024 * 1024;

    /** Text unpacks to about ten times its size; only what was made for it unpacks to more than this. */
    static final long MOST_RATIO = 200;

    /** So little is never a bomb. */
    private static final long HARMLESS_BYTES = 1024 * 1024;

    private final long[] farthest;
    private long total;

    Allowance(int sheets) {
        this.farthest = new long[sheets];
    }

    /** Counts what has been read of a sheet by now. */
    synchronized void count(int sheet, long bytes, long packedBytes) {
        if (bytes > farthest[sheet]) {
            total += bytes - farthest[sheet];
            farthest[sheet] = bytes;
        }
        if (total > MOST_BYTES) {
            throw new UnreadableException(Fault.TOO_LARGE);
        }
        if (bytes > HARMLESS_BYTES && bytes / MOST_RATIO > Math.max(1, packedBytes)) {
            throw new UnreadableException(Fault.TOO_DENSE);
        }
    }
}
