package dapple.api;

import dapple.light.survey.Crew;
import jakarta.annotation.PreDestroy;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The threads that requests are computed on, one a core, and as many requests at once. Who asked is answered when the
 * deadline is over, even if a thread still computes the place that it has begun; the turn is given back only then.
 */
@Component
class Engine {
    private static final long MOST_WAITING_MILLIS = 500;

    private final int cores = Runtime.getRuntime().availableProcessors();
    private final ExecutorService threads = Executors.newFixedThreadPool(cores, Engine::thread);
    private final Semaphore turns = new Semaphore(cores);
    private final Duration longest;

    Engine(@Value("${dapple.api.longest-run:30s}") Duration longest) {
        this.longest = longest;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "light");
        thread.setDaemon(true);
        return thread;
    }

    @PreDestroy
    void close() {
        threads.shutdownNow();
    }

    /** Computes one request in its turn. */
    <T> T run(Function<Run, T> work) {
        takeTurn();
        Run run = new Run(Deadline.in(longest));
        try {
            return work.apply(run);
        } finally {
            CompletableFuture<?> unused = run.begun.whenComplete((done, failed) -> turns.release());
        }
    }

    private void takeTurn() {
        try {
            if (turns.tryAcquire(MOST_WAITING_MILLIS, TimeUnit.MILLISECONDS)) {
                return;
            }
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
        }
        throw Problem.of(503, "Busy", "Other requests are being computed. Try again in a few seconds.")
                .refused();
    }

    /** One request under way. */
    final class Run implements Crew {
        private final Deadline deadline;
        private CompletableFuture<?> begun = CompletableFuture.completedFuture(true);

        private Run(Deadline deadline) {
            this.deadline = deadline;
        }

        Deadline deadline() {
            return deadline;
        }

        @Override
        public <T> void each(int count, Supplier<T> tools, Work<T> work) {
            Chunks chunks = new Chunks(count, deadline);
            onEveryCore(() -> chunks.work(tools, work));
        }

        @Override
        public <T> T alone(Supplier<T> work) {
            AtomicReference<T> done = new AtomicReference<>();
            onOneCore(() -> done.set(work.get()));
            return Optional.ofNullable(done.get()).orElseThrow();
        }

        /** Does the same work on every core at once, and waits for all of it. */
        void onEveryCore(Runnable work) {
            on(cores, work);
        }

        void onOneCore(Runnable work) {
            on(1, work);
        }

        private void on(int count, Runnable work) {
            List<CompletableFuture<Void>> parts = IntStream.range(0, count)
                    .mapToObj(core -> CompletableFuture.runAsync(work, threads))
                    .toList();
            begun = CompletableFuture.allOf(parts.toArray(new CompletableFuture<?>[0]));
            await();
        }

        private void await() {
            try {
                begun.get(deadline.nanosLeft(), TimeUnit.NANOSECONDS);
            } catch (TimeoutException passed) {
                throw deadline.passed();
            } catch (InterruptedException stopping) {
                Thread.currentThread().interrupt();
                throw deadline.passed();
            } catch (ExecutionException failed) {
                throw failed.getCause() instanceof RefusedException refused
                        ? refused
                        : new CompletionException(failed.getCause());
            }
        }
    }
}
