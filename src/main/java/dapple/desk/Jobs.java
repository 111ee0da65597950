package dapple.desk;

import dapple.light.survey.Crew;
import jakarta.annotation.PreDestroy;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;
import java.util.function.DoubleConsumer;
import org.springframework.stereotype.Component;

/**
 * The searches in the background: one at a time, on all hands; a few wait. Each person has one for each draft. What was found
 * is kept until newer ones push it out, and is lost when the program ends.
 */
@Component
class Jobs {
    private static final int WAITING = 8;
    private static final int KEPT = 40;

    private final Crew crew;
    private final ThreadPoolExecutor thread;
    private final Map<Key, Job> jobs = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Job> eldest) {
            return size() > KEPT;
        }
    };

    Jobs(Crew crew) {
        this.crew = crew;
        this.thread =
                new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING), Jobs::thread);
    }

    /** Whose search, in which draft. */
    record Key(long draftId, long personId) {}

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "proposals");
        thread.setDaemon(true);
        return thread;
    }

    @PreDestroy
    void close() {
        thread.shutdownNow();
    }

    /** How a search stands now; empty if it was never begun, or is kept no longer. */
    synchronized Optional<Job.Standing> find(Key key) {
        return Optional.ofNullable(jobs.get(key)).map(Job::standing);
    }

    /** Begins a search, unless one is under way; whether one is now. */
    synchronized boolean begin(Key key, long draftVersion, BiFunction<Crew, DoubleConsumer, Proposed> work) {
        if (find(key).filter(Job.Standing::isUnderWay).isPresent()) {
            return true;
        }
        Job job = new Job(draftVersion);
        try {
            thread.execute(() -> job.run(crew, work));
        } catch (RejectedExecutionException tooMany) {
            return false;
        }
        jobs.put(key, job);
        return true;
    }

    synchronized void stop(Key key) {
        Optional.ofNullable(jobs.get(key)).ifPresent(Job::stop);
    }
}
