package dapple.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Lets several threads do something at the same instant. */
public final class Together {
    private static final long PATIENCE_SECONDS = 30;

    private Together() {}

    /** Runs all at once, each in a thread of its own, and gives back what was thrown. */
    public static List<Throwable> run(Runnable... works) {
        CyclicBarrier start = new CyclicBarrier(works.length);
        List<Throwable> thrown = new ArrayList<>();
        List<Thread> threads = new ArrayList<>();
        for (Runnable work : works) {
            Thread thread = new Thread(() -> attempt(start, work, thrown));
            thread.start();
            threads.add(thread);
        }
        threads.forEach(Together::await);
        return thrown;
    }

    private static void attempt(CyclicBarrier start, Runnable work, List<Throwable> thrown) {
        try {
            start.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
            work.run();
        } catch (RuntimeException | InterruptedException | BrokenBarrierException | TimeoutException cause) {
            synchronized (thrown) {
                thrown.add(cause);
            }
        }
    }

    private static void await(Thread thread) {
        try {
            thread.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
        } catch (InterruptedException cause) {
            throw new IllegalStateException("interrupted while waiting for a thread", cause);
        }
        if (thread.isAlive()) {
            throw new IllegalStateException("a thread does not end");
        }
    }
}
