package dapple.api;

import dapple.light.field.Field;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Many places of one field, shared out to all cores in chunks. Each place is computed by itself and stored at its own
 * index, so that the result does not depend on which thread did it, or on how many there are.
 */
final class Chunks {
    private static final int CHUNK = 64;

    private final int count;
    private final Deadline deadline;
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicBoolean failed = new AtomicBoolean();

    Chunks(int count, Deadline deadline) {
        this.count = count;
        this.deadline = deadline;
    }

    /** Takes chunks until none is left; to be run by any number of threads at once. */
    void work(Field field, Place place) {
        try {
            Field own = field.another();
            for (int begin = next.getAndAdd(CHUNK); begin < count && !failed.get(); begin = next.getAndAdd(CHUNK)) {
                for (int index = begin; index < Math.min(count, begin + CHUNK); index++) {
                    deadline.check();
                    place.compute(own, index);
                }
            }
        } catch (RuntimeException cause) {
            failed.set(true);
            throw cause;
        }
    }

    /** Computes the place at an index and stores what it finds. */
    interface Place {
        void compute(Field field, int index);
    }
}
