package dapple.light.design;

import java.util.function.DoubleConsumer;

/** Tells how much is done; never less than before. */
final class Progress {
    private final DoubleConsumer listener;
    private final int steps;
    private int done;
    private double told;

    /** @param steps of the first part */
    Progress(DoubleConsumer listener, int steps) {
        this.listener = listener;
        this.steps = steps;
    }

    /** One step of the first part, which ends at a share. */
    synchronized void step(double end) {
        done++;
        tell(end * done / steps);
    }

    synchronized void tell(double share) {
        if (share > told) {
            told = share;
            listener.accept(share);
        }
    }
}
