package dapple.demo;

import dapple.meter.MeterFacts;
import dapple.practice.Entered;
import dapple.practice.MeterEventKind;
import dapple.practice.NewReferenceLamp;
import dapple.practice.PracticeLogging;
import dapple.practice.Shown;
import dapple.site.Given;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** What the demo's keepers do with their meters: one is checked by its lamp each week, one fell some days ago. */
@Component
@Profile("demo")
class DemoPractice {
    private static final Duration WEEK = Duration.ofDays(7);

    /** Of the reference lamp, UVI, oldest first; one week it was read too near, and again on the same day. */
    private static final List<Double> SHOWN = List.of(4.1, 4.0, 4.1, 4.0, 4.3, 4.0, 3.9, 4.0, 3.9);

    private final PracticeLogging logging;

    DemoPractice(PracticeLogging logging) {
        this.logging = logging;
    }

    void keep(DemoTeam.Members members, Map<String, MeterFacts> meters, Instant now) {
        long steady = Given.of(meters.get("M1")).id();
        Instant first = now.minus(WEEK.multipliedBy(SHOWN.size() + 1L));
        logging.nameLamp(
                entered(members, steady, "lamp", first),
                new NewReferenceLamp(
                        "L90 in the workshop", "holder at 30 cm, 30 min warm, sensor facing up", 4.0, first));
        for (int week = 0; week < SHOWN.size(); week++) {
            Instant at = first.plus(WEEK.multipliedBy(week + 1L));
            Shown shown = new Shown(SHOWN.get(week), at, "");
            logging.checkByLamp(entered(members, steady, "lamp check " + week, at), shown);
        }
        drop(members, Given.of(meters.get("M3")).id(), now);
    }

    private void drop(DemoTeam.Members members, long fallen, Instant now) {
        Instant checked = now.minus(Duration.ofDays(9));
        Instant dropped = now.minus(Duration.ofDays(1));
        logging.checkDarkZero(entered(members, fallen, "dark zero", checked), new Shown(0, checked, ""));
        logging.happened(
                entered(members, fallen, "dropped", dropped),
                MeterEventKind.DROPPED,
                dropped,
                "on the floor of the desert house");
    }

    private static Entered entered(DemoTeam.Members members, long meterId, String name, Instant at) {
        UUID key = UUID.nameUUIDFromBytes((name + " of " + meterId).getBytes(StandardCharsets.UTF_8));
        return new Entered(members.siteId(), meterId, members.keeper(), at, key);
    }
}
