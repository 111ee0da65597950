package dapple.importing.sheet;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongConsumer;

/** Tells how many bytes have been read. */
final class CountedStream extends FilterInputStream {
    private final LongConsumer heard;
    private long bytes;

    CountedStream(InputStream in, LongConsumer heard) {
        super(in);
        this.heard = heard;
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        if (one >= 0) {
            count(1);
        }
        return one;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int read = super.read(buffer, offset, length);
        if (read > 0) {
            count(read);
        }
        return read;
    }

    @Override
    public long skip(long wanted) throws IOException {
        long skipped = super.skip(wanted);
        count(skipped);
        return skipped;
    }

    @Override
    public boolean markSupported() {
        return false;
    }

    private void count(long more) {
        bytes += more;
        heard.accept(bytes);
    }
}
