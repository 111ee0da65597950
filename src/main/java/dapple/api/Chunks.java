package dapple.api;

import dapple.light.survey.Crew;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/**
 * Many numbers, shared out to all cores in chunks. Each is worked at by itself and stores what it finds at its own index,
 * so that the result does not depend on which thread did it, or on how many there are.
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
    <T> void work(Supplier<T> tools, Crew.Work<T> work) {
        try {
            T own = tools.get();
            for (int begin = next.getAndAdd(CHUNK); begin < count && !failed.get(); begin = next.getAndAdd(CHUNK)) {
                for (int index = begin; index < Math.min(count, begin + CHUNK); index++) {
                    deadline.check();
                    work.at(own, index);
                }
            }
        } catch (RuntimeException cause) {
            failed.set(true);
            throw cause;
        }
    }
}
