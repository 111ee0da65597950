package dapple.agreement;

import dapple.meter.CalibrationRecorded;
import dapple.reading.ReadingLogged;
import dapple.reading.ReadingWithdrawn;
import dapple.reading.ReadingsImported;
import dapple.reading.StandingReadings;
import dapple.rig.RigChanged;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import jakarta.annotation.PreDestroy;
import java.time.Clock;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/** Holds meters against one another behind the scenes: some minutes after readings came in, at the start, every night. */
@Component
class AgreementQueue {
    private static final Logger LOG = LoggerFactory.getLogger(AgreementQueue.class);
    private static final long MINUTE = 1;

    private final Agreements agreements;
    private final StandingReadings readings;
    private final Sites sites;
    private final Clock clock;
    private final boolean isWanted;
    private final Waiting waiting = new Waiting();
    private final ScheduledExecutorService behind = Executors.newSingleThreadScheduledExecutor(run -> {
        Thread thread = new Thread(run, "agreement");
        thread.setDaemon(true);
        return thread;
    });

    AgreementQueue(
            Agreements agreements,
            StandingReadings readings,
            Sites sites,
            Clock clock,
            @Value("${dapple.agreement.behind-the-scenes:true}") boolean isWanted) {
        this.agreements = agreements;
        this.readings = readings;
        this.sites = sites;
        this.clock = clock;
        this.isWanted = isWanted;
    }

    @TransactionalEventListener
    void logged(ReadingLogged reading) {
        note(reading.readingId());
    }

    @TransactionalEventListener
    void withdrawn(ReadingWithdrawn reading) {
        note(reading.readingId());
    }

    @TransactionalEventListener
    void imported(ReadingsImported imported) {
        waiting.note(imported.siteId(), clock.instant());
    }

    @TransactionalEventListener
    void calibrated(CalibrationRecorded recorded) {
        waiting.note(recorded.siteId(), clock.instant());
    }

    @TransactionalEventListener
    void changed(RigChanged changed) {
        waiting.note(changed.siteId(), clock.instant());
    }

    private void note(long readingId) {
        if (isWanted) {
            behind.execute(() -> waiting.note(readings.siteOf(readingId), clock.instant()));
        }
    }

    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        if (isWanted) {
            ScheduledFuture<?> unused = behind.scheduleWithFixedDelay(this::look, MINUTE, MINUTE, TimeUnit.MINUTES);
        }
    }

    /** What must not end the repetition is caught: the database may be away for a while. */
    private void look() {
        try {
            sites.all().forEach(this::look);
        } catch (RuntimeException broken) {
            LOG.error("Meters could not be compared; it is tried again in a minute", broken);
        }
    }

    private void look(SiteFacts site) {
        if (!behind.isShutdown() && waiting.take(site.id(), site.timeZone(), clock.instant())) {
            renew(site.id());
        }
    }

    /** What has failed is tried again the next night; the outcome before it stays. */
    private void renew(long siteId) {
        try {
            agreements.renew(siteId);
        } catch (RuntimeException broken) {
            LOG.error("The meters of site {} could not be compared", siteId, broken);
        }
    }

    @PreDestroy
    void stop() {
        behind.shutdownNow();
    }
}
