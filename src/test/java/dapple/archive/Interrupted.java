package dapple.archive;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Something happens once, before the first byte is written. */
final class Interrupted extends FilterOutputStream {
    private final Runnable happening;
    private boolean hasHappened;

    Interrupted(OutputStream to, Runnable happening) {
        super(to);
        this.happening = happening;
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        happenOnce();
        out.write(bytes, from, length);
    }

    @Override
    public void write(int one) throws IOException {
        happenOnce();
        out.write(one);
    }

    private void happenOnce() {
        if (!hasHappened) {
            hasHappened = true;
            happening.run();
        }
    }
}
