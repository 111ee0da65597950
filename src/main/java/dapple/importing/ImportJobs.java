package dapple.importing;

import dapple.people.SignedIn;
import jakarta.annotation.PreDestroy;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** Tries and imports behind the scenes, one at a time; a few wait. */
@Component
class ImportJobs {
    private static final int WAITING = 8;
    private static final int KEPT = 100;

    private final ThreadPoolExecutor thread =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING), ImportJobs::thread);
    private final Map<Long, Job> jobs = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Job> eldest) {
            return size() > KEPT;
        }
    };

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "imports");
        thread.setDaemon(true);
        return thread;
    }

    @PreDestroy
    void close() {
        jobs.values().forEach(Job::stop);
        thread.shutdownNow();
    }

    synchronized Optional<Job> find(long runId) {
        return Optional.ofNullable(jobs.get(runId));
    }

    /** Begins, unless something is under way for the same import; whether something is now. */
    synchronized boolean begin(SignedIn me, long runId, Job.Kind kind, Consumer<DoubleConsumer> work) {
        if (find(runId).filter(Job::isUnderWay).isPresent()) {
            return true;
        }
        Job job = new Job(kind);
        try {
            thread.execute(() -> as(me, () -> job.run(work)));
        } catch (RejectedExecutionException tooMany) {
            return false;
        }
        jobs.put(runId, job);
        return true;
    }

    /** What is stored carries the name of who began it. */
    private static void as(SignedIn me, Runnable work) {
        SecurityContextHolder.getContext()
                .setAuthentication(UsernamePasswordAuthenticationToken.authenticated(me, null, Set.of()));
        try {
            work.run();
        } finally {
            SecurityContextHolder.clearContext();
        }
    }

    void stop(long runId) {
        find(runId).ifPresent(Job::stop);
    }

    synchronized void forget(long runId) {
        jobs.remove(runId);
    }
}
