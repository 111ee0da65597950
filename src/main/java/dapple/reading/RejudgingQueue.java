package dapple.reading;

import jakarta.annotation.PreDestroy;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * Judges anew after the commit of what asks for it: the first batch before the answer goes out, so that a fact of last
 * week shows at once, of a whole species the newest readings; a longer past behind the scenes, one after the other. What
 * a stop leaves undone goes on at the next start.
 */
@Component
class RejudgingQueue {
    private static final Logger LOG = LoggerFactory.getLogger(RejudgingQueue.class);

    private final RejudgingWork work;
    private final RejudgingDueRepository dues;
    private final Map<Long, RejudgingDue> underWay = new ConcurrentHashMap<>();
    private final ExecutorService behind = Executors.newSingleThreadExecutor(run -> {
        Thread thread = new Thread(run, "rejudging");
        thread.setDaemon(true);
        return thread;
    });

    RejudgingQueue(RejudgingWork work, RejudgingDueRepository dues) {
        this.work = work;
        this.dues = dues;
    }

    @TransactionalEventListener
    void begin(RejudgingAsked asked) {
        if (work.begin(asked.dueId())) {
            dues.findById(asked.dueId()).ifPresent(this::goOn);
        }
    }

    @EventListener(ApplicationReadyEvent.class)
    void resume() {
        dues.unfinished().forEach(this::goOn);
    }

    /** The enclosures with visits that wait or are judged behind the scenes; pages ask this often, so no database. */
    Set<Long> enclosures(long siteId) {
        return underWay.values().stream()
                .filter(due -> due.siteId() == siteId)
                .flatMap(due -> due.enclosureId().stream())
                .collect(Collectors.toSet());
    }

    /** Whether anything of a site waits or is judged behind the scenes. */
    boolean isUnderWay(long siteId) {
        return underWay.values().stream().anyMatch(due -> due.siteId() == siteId);
    }

    private void goOn(RejudgingDue due) {
        underWay.put(due.id(), due);
        behind.execute(() -> finish(due.id()));
    }

    private void finish(long dueId) {
        try {
            boolean more = true;
            while (more && !behind.isShutdown()) {
                more = work.goOn(dueId);
            }
            underWay.remove(dueId);
        } catch (RuntimeException broken) {
            LOG.error("Judging anew has stopped; it goes on at the next start: {}", dueId, broken);
        }
    }

    @PreDestroy
    void stop() {
        behind.shutdown();
    }
}
