package dapple.demo;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.function.Consumer;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Makes the demo's collection on the first start of its profile, before the first page is served. */
@Component
@Profile("demo")
class DemoData implements SmartInitializingSingleton {
    private final DemoClock clock;
    private final DemoTeam team;
    private final DemoCollection collection;
    private final DemoLatest latest;

    DemoData(DemoClock clock, DemoTeam team, DemoCollection collection, DemoLatest latest) {
        this.clock = clock;
        this.team = team;
        this.collection = collection;
        this.latest = latest;
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (team.isMissing()) {
            tell();
        }
    }

    /** Tells the story into an empty database, as if its two years ended now. */
    void tell() {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MINUTES);
        clock.whileStanding(time -> tell(now, time));
    }

    private void tell(Instant now, Consumer<Instant> time) {
        DemoChapters chapters = new DemoChapters();
        DemoCollection.Told told = collection.make(now, time, chapters);
        chapters.tell("of late", () -> {
            latest.happen(told, time);
            return told;
        });
        chapters.tell("meters", () -> {
            latest.compareMeters(told);
            return told;
        });
    }
}
