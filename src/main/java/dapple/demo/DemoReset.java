package dapple.demo;

import dapple.site.ConflictException;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.util.concurrent.atomic.AtomicBoolean;
import org.flywaydb.core.Flyway;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Throws away all that the demo's database holds and tells the story anew. Backups stay. */
@Component
@Profile("demo")
class DemoReset {
    private final Flyway flyway;
    private final DemoData data;
    private final Sites sites;
    private final AtomicBoolean running = new AtomicBoolean();

    DemoReset(Flyway flyway, DemoData data, Sites sites) {
        this.flyway = flyway;
        this.data = data;
        this.sites = sites;
    }

    boolean isRunning() {
        return running.get();
    }

    /** Whether nothing but the demo is here: a real collection that was opened in this profile is never thrown away. */
    boolean isPossible() {
        return sites.all().stream().map(SiteFacts::name).allMatch(DemoTeam.SITE::equals);
    }

    /**
     * Takes some seconds, in which nobody is served.
     *
     * @throws ConflictException if it is under way, or there is another site than the demo's
     */
    void run() {
        if (!running.compareAndSet(false, true)) {
            throw new ConflictException("the demo is being reset already");
        }
        try {
            if (!isPossible()) {
                throw new ConflictException("there is another site than the demo’s");
            }
            empty();
            data.tell();
        } finally {
            running.set(false);
        }
    }

    private void empty() {
        Flyway emptying = Flyway.configure()
                .configuration(flyway.getConfiguration())
                .cleanDisabled(false)
                .load();
        emptying.clean();
        emptying.migrate();
    }
}
