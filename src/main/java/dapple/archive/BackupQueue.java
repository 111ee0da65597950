package dapple.archive;

import dapple.people.FirstRun;
import jakarta.annotation.PreDestroy;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Makes backups behind the scenes: every night, and when somebody asks. One that fails stops nothing else. */
@Component
class BackupQueue {
    private static final Logger LOG = LoggerFactory.getLogger(BackupQueue.class);
    private static final long MINUTE = 1;

    private final Backups backups;
    private final FirstRun firstRun;
    private final Clock clock;
    private final boolean isWanted;
    private final AtomicBoolean isWaiting = new AtomicBoolean();
    private volatile Optional<Instant> tried = Optional.empty();
    private volatile Optional<Instant> failed = Optional.empty();
    private final ScheduledExecutorService behind = Executors.newSingleThreadScheduledExecutor(run -> {
        Thread thread = new Thread(run, "backup");
        thread.setDaemon(true);
        return thread;
    });

    BackupQueue(
            Backups backups,
            FirstRun firstRun,
            Clock clock,
            @Value("${dapple.backup.behind-the-scenes:true}") boolean isWanted) {
        this.backups = backups;
        this.firstRun = firstRun;
        this.clock = clock;
        this.isWanted = isWanted;
    }

    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        if (isWanted) {
            ScheduledFuture<?> unused = behind.scheduleWithFixedDelay(this::look, MINUTE, MINUTE, TimeUnit.MINUTES);
        }
    }

    /** What must not end the repetition is caught. */
    private void look() {
        try {
            if (!firstRun.isPending() && isDue()) {
                make("");
            }
        } catch (IOException | RuntimeException broken) {
            LOG.error("It could not be seen whether a backup is due; it is looked again in a minute", broken);
        }
    }

    private boolean isDue() throws IOException {
        Optional<Instant> newest =
                backups.newest().flatMap(BackupFile::manifest).map(Manifest::madeAt);
        return Night.isDue(clock.instant(), ZoneId.systemDefault(), newest, tried);
    }

    /** Makes one as soon as possible; whoever asks while one is waiting gets that one. */
    void ask(String madeBy) {
        if (isWaiting.compareAndSet(false, true)) {
            behind.execute(() -> {
                make(madeBy);
                isWaiting.set(false);
            });
        }
    }

    boolean isWaiting() {
        return isWaiting.get();
    }

    /** When the last one that was tried since the start failed; empty if it did not. */
    Optional<Instant> failed() {
        return failed;
    }

    private void make(String madeBy) {
        Instant now = clock.instant();
        tried = Optional.of(now);
        try {
            BackupFile made = backups.make(madeBy.isEmpty() ? "the program, by itself" : madeBy);
            failed = Optional.empty();
            LOG.info("Backup {} in {}, {} bytes", BackupFile.name(made.day()), backups.folder(), made.bytes());
        } catch (IOException | RuntimeException broken) {
            failed = Optional.of(now);
            LOG.error("The backup has failed; the last one stays", broken);
        }
    }

    /** Ends when everything that was asked for before is done. */
    CompletableFuture<Void> settled() {
        return CompletableFuture.runAsync(() -> {}, behind);
    }

    @PreDestroy
    void stop() {
        behind.shutdownNow();
    }
}
