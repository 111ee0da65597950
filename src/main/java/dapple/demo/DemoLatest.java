package dapple.demo;

import dapple.agreement.Agreements;
import dapple.demo.DemoCollection.Told;
import dapple.site.Given;
import java.time.Instant;
import java.util.Map;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** What the demo's people have decided, compared, thought of and planned of late. */
@Component
@Profile("demo")
class DemoLatest {
    /** Which findings have been decided about. */
    private static final String ACCEPTED = "E02";

    private static final String GIVEN = "E04";

    /** What other rigs have been thought of for. */
    private static final String DRAFTED = "E07";

    private final DemoDesk desk;
    private final DemoPractice practice;
    private final DemoComparison comparison;
    private final DemoDrafts drafts;
    private final DemoPlans plans;
    private final DemoDoors doors;
    private final DemoPhotos photos;
    private final Agreements agreements;

    DemoLatest(
            DemoDesk desk,
            DemoPractice practice,
            DemoComparison comparison,
            DemoDrafts drafts,
            DemoPlans plans,
            DemoDoors doors,
            DemoPhotos photos,
            Agreements agreements) {
        this.desk = desk;
        this.practice = practice;
        this.comparison = comparison;
        this.drafts = drafts;
        this.plans = plans;
        this.doors = doors;
        this.photos = photos;
        this.agreements = agreements;
    }

    void happen(Told told, Consumer<Instant> time) {
        DemoTeam.Members members = told.story().members();
        Instant now = told.story().now();
        Map<String, Long> byCode = told.enclosureIds();
        time.accept(now);
        desk.accept(members, Given.of(byCode.get(ACCEPTED)), now);
        desk.give(members, Given.of(byCode.get(GIVEN)), now);
        practice.keep(members, told.story().meters(), now);
        comparison.compare(members, new DemoComparison.Stock(told.story().meters(), byCode), now, time);
        drafts.think(members, Given.of(byCode.get(DRAFTED)), now);
        plans.plan(members, byCode, now, time);
        doors.label(members, byCode);
        photos.take(members, Given.of(byCode.get(DRAFTED)));
    }

    /** What all readings say of the meters: it is there before the first page is served. */
    void compareMeters(Told told) {
        agreements.renew(told.story().members().siteId());
    }
}
