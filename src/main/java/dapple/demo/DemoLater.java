package dapple.demo;

import dapple.demo.DemoFailures.Failure;
import dapple.demo.DemoFailures.Kind;
import dapple.demo.DemoHouse.Place;
import dapple.reading.Entry;
import dapple.reading.Outcome;
import dapple.reading.ReadingLogging;
import dapple.reading.ReadingWithdrawing;
import dapple.reading.Unread;
import dapple.reading.VisitPlace;
import dapple.site.Given;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What was entered in the demo besides its readings, or after them: why nothing was read, and what was wrongly entered. */
@Component
@Profile("demo")
class DemoLater {
    private static final Duration UNTIL_NOTICED = Duration.ofDays(2);
    private static final String MISPLACED = "select r.id, r.point_id, r.meter_id, r.amount from reading r "
            + "join visit v on v.id = r.visit_id where v.enclosure_id = :enclosure and v.begun_at = :at order by r.id";

    private final ReadingLogging logging;
    private final ReadingWithdrawing withdrawing;
    private final JdbcClient database;

    DemoLater(ReadingLogging logging, ReadingWithdrawing withdrawing, JdbcClient database) {
        this.logging = logging;
        this.withdrawing = withdrawing;
        this.database = database;
    }

    void enter(DemoStory story, DemoFailures failures, Map<String, DemoHouse> houses, Consumer<Instant> time) {
        failures.of(Kind.POWER_CUT)
                .forEach(failure -> noteUnread(story, failure, Given.of(houses.get(failure.enclosure())), time));
        failures.of(Kind.WRONG_ENCLOSURE).forEach(failure -> {
            DemoHouse entered = Given.of(houses.get(failure.enclosure()));
            putRight(story, failure, entered, Given.of(houses.get(failure.other())), time);
        });
    }

    private void noteUnread(DemoStory story, Failure failure, DemoHouse house, Consumer<Instant> time) {
        Instant at = story.readAt(house.space(), failure.fromWeek());
        UUID visit = key(failure.enclosure() + " in the power cut");
        time.accept(at);
        for (Place place : house.places()) {
            VisitPlace where =
                    new VisitPlace(visit, house.enclosureId(), place.point().id());
            logging.note(story.keeper(), new Unread(key(where + " unread"), where, Outcome.LAMP_OUT, at));
        }
    }

    /** Withdraws what was entered at the wrong enclosure, and enters it where it was read. */
    private void putRight(
            DemoStory story, Failure failure, DemoHouse entered, DemoHouse meant, Consumer<Instant> time) {
        Instant at = story.readAt(entered.space(), failure.fromWeek());
        UUID visit = key(failure.what());
        time.accept(at.plus(UNTIL_NOTICED));
        for (Misplaced reading : misplaced(entered, at)) {
            withdrawing.withdraw(story.supervisor(), reading.id(), "Read at " + failure.other() + ", entered here");
            Place place = meant.place(entered.codeOf(reading.pointId()));
            VisitPlace where =
                    new VisitPlace(visit, meant.enclosureId(), place.point().id());
            UUID key = key(where + " with " + reading.meterId());
            logging.log(story.keeper(), new Entry(key, where, reading.meterId(), reading.amount(), at));
        }
    }

    private List<Misplaced> misplaced(DemoHouse entered, Instant at) {
        OffsetDateTime begun = at.atOffset(ZoneOffset.UTC);
        return database.sql(MISPLACED)
                .param("enclosure", entered.enclosureId())
                .param("at", begun)
                .query(Misplaced.class)
                .list();
    }

    private static UUID key(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    /** A reading that belongs elsewhere. */
    record Misplaced(long id, long pointId, long meterId, double amount) {}
}
