package dapple.prediction;

import dapple.light.survey.Crew;
import jakarta.annotation.PreDestroy;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/**
 * The thread that asks, helped by as many others as there are further cores. Who asks begins at once and never waits for a
 * helper that is busy elsewhere. The amount of work is bounded by {@link Mesh}, so that no deadline is needed.
 */
@Component
final class Hands implements Crew {
    private static final int CHUNK = 32;

    private final int helpers;
    private final ExecutorService threads;

    Hands() {
        this.helpers = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
        this.threads = Executors.newFixedThreadPool(helpers, Hands::thread);
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "live light");
        thread.setDaemon(true);
        return thread;
    }

    @PreDestroy
    void close() {
        threads.shutdownNow();
    }

    @Override
    public <T> void each(int count, Supplier<T> tools, Work<T> work) {
        Job<T> job = new Job<>(count, tools, work);
        for (int helper = 0; helper < Math.min(helpers, job.chunks - 1); helper++) {
            threads.execute(job::help);
        }
        job.help();
        job.await();
    }

    @Override
    public <T> T alone(Supplier<T> work) {
        return work.get();
    }

    /** Numbers that are taken in chunks; each stores what it finds at its own index. */
    private static final class Job<T> {
        private final int count;
        private final int chunks;
        private final Supplier<T> tools;
        private final Work<T> work;
        private final AtomicInteger next = new AtomicInteger();
        private final AtomicReference<RuntimeException> failure = new AtomicReference<>();
        private final CountDownLatch left;

        Job(int count, Supplier<T> tools, Work<T> work) {
            this.count = count;
            this.chunks = (count + CHUNK - 1) / CHUNK;
            this.tools = tools;
            this.work = work;
            this.left = new CountDownLatch(chunks);
        }

        /** Takes chunks until none is left. */
        void help() {
            int chunk = next.getAndIncrement();
            if (chunk >= chunks) {
                return;
            }
            try {
                T own = tools.get();
                for (; chunk < chunks; chunk = next.getAndIncrement()) {
                    work(own, chunk);
                    left.countDown();
                }
            } catch (RuntimeException cause) {
                failure.compareAndSet(null, cause);
                giveUp();
            }
        }

        private void work(T own, int chunk) {
            int end = Math.min(count, (chunk + 1) * CHUNK);
            for (int index = chunk * CHUNK; index < end; index++) {
                work.at(own, index);
            }
        }

        private void giveUp() {
            next.set(chunks);
            while (left.getCount() > 0) {
                left.countDown();
            }
        }

        void await() {
            try {
                left.await();
            } catch (InterruptedException stopping) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("stopped while light was computed", stopping);
            }
            RuntimeException cause = failure.get();
            if (cause != null) {
                throw cause;
            }
        }
    }
}
