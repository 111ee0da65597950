package dapple.archive;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A zip that is written entry by entry, with the sum of each. */
final class SummedZip {
    /** Tables shrink to a sixth at any level; higher ones only take longer. */
    private static final int QUICK = 3;

    private static final int BUFFER_BYTES = 1 << 16;

    private final ZipOutputStream zip;
    private final Map<String, String> sums = new TreeMap<>();

    SummedZip(OutputStream to) {
        this.zip = new ZipOutputStream(new BufferedOutputStream(to, BUFFER_BYTES), StandardCharsets.UTF_8);
        zip.setLevel(QUICK);
    }

    /** What an entry holds; what it is written to is not closed. */
    @FunctionalInterface
    interface Content {
        void write(OutputStream to) throws IOException;
    }

    void entry(String name, Content content) throws IOException {
        MessageDigest sum = Sha256.begun();
        zip.putNextEntry(new ZipEntry(name));
        OutputStream buffered = new BufferedOutputStream(new DigestOutputStream(new Kept(zip), sum), BUFFER_BYTES);
        content.write(buffered);
        buffered.flush();
        zip.closeEntry();
        sums.put(name, Sha256.text(sum));
    }

    /** What was written so far goes out, so that who waits for it sees that it comes. */
    void flush() throws IOException {
        zip.flush();
    }

    /** The sums of all entries so far, by name. */
    Map<String, String> sums() {
        return Map.copyOf(sums);
    }

    /** Writes the end, without which the file cannot be opened; what it was written to is not closed. */
    void finish() throws IOException {
        zip.finish();
        zip.flush();
    }

    /** Stays open when an entry ends. */
    private static final class Kept extends FilterOutputStream {
        Kept(OutputStream to) {
            super(to);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() {}
    }
}
