package dapple.leaving;

import dapple.people.FirstRun;
import dapple.site.HourPassed;
import jakarta.annotation.PreDestroy;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Erases behind the scenes those whose time is over, and tells the hour to others: soon after the start, and every hour. */
@Component
class ErasingQueue {
    private static final Logger LOG = LoggerFactory.getLogger(ErasingQueue.class);
    private static final long FIRST_MINUTES = 5;
    private static final long EVERY_MINUTES = 60;

    private final Erasing erasing;
    private final FirstRun firstRun;
    private final ApplicationEventPublisher events;
    private final boolean isWanted;
    private final ScheduledExecutorService behind = Executors.newSingleThreadScheduledExecutor(run -> {
        Thread thread = new Thread(run, "erasing");
        thread.setDaemon(true);
        return thread;
    });

    ErasingQueue(
            Erasing erasing,
            FirstRun firstRun,
            ApplicationEventPublisher events,
            @Value("${dapple.leaving.behind-the-scenes:true}") boolean isWanted) {
        this.erasing = erasing;
        this.firstRun = firstRun;
        this.events = events;
        this.isWanted = isWanted;
    }

    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        if (isWanted) {
            ScheduledFuture<?> unused =
                    behind.scheduleWithFixedDelay(this::look, FIRST_MINUTES, EVERY_MINUTES, TimeUnit.MINUTES);
        }
    }

    /** What must not end the repetition is caught: the database may be away for a while. */
    void look() {
        try {
            if (!firstRun.isPending()) {
                erasing.due().forEach(this::erase);
                events.publishEvent(new HourPassed());
            }
        } catch (RuntimeException broken) {
            LOG.error("It could not be seen what is to go; it is looked again in an hour", broken);
        }
    }

    private void erase(long personId) {
        try {
            erasing.erase(personId);
        } catch (RuntimeException broken) {
            LOG.error("The names of person {} could not be erased; it is tried again in an hour", personId, broken);
        }
    }

    @PreDestroy
    void stop() {
        behind.shutdownNow();
    }
}
