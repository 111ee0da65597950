package dapple.demo;

import dapple.demo.DemoRows.Space;
import dapple.demo.DemoRows.Spot;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's weekly readings: from each point's first value to its last, with the scatter of a hand-held meter. */
@Component
@Profile("demo")
class DemoRounds {
    private static final int WEEKS = 8;
    private static final Duration WEEK = Duration.ofDays(7);
    private static final Duration BETWEEN_POINTS = Duration.ofMinutes(1);
    private static final Duration BETWEEN_ENCLOSURES = Duration.ofMinutes(5);
    private static final Duration MORNING = Duration.ofHours(10);
    private static final double SCATTER = 0.03;
    private static final long SEED = 20_260_901;

    private final Enclosures enclosures;
    private final ReadingLogging logging;

    DemoRounds(Enclosures enclosures, ReadingLogging logging) {
        this.enclosures = enclosures;
        this.logging = logging;
    }

    /** Adds the points of an enclosure and reads them weekly until its last reading. */
    void walk(Story story, long enclosure, Space space, List<Spot> spots, Consumer<Instant> time) {
        List<PointFacts> points = spots.stream()
                .map(spot -> enclosures.addPoint(story.members().siteId(), enclosure, spot.point()))
                .toList();
        Random chance = new Random(SEED + space.code().hashCode());
        Instant last = story.daysAgo(space.lastReadDaysAgo());
        for (int week = 1; week <= WEEKS; week++) {
            Instant at = last.minus(WEEK.multipliedBy(WEEKS - week))
                    .plus(BETWEEN_ENCLOSURES.multipliedBy(space.codeNumber()));
            UUID visit = key(space.code() + " week " + week);
            for (int place = 0; place < points.size(); place++) {
                Instant taken = at.plus(BETWEEN_POINTS.multipliedBy(place));
                time.accept(taken);
                double uvi = value(spots.get(place), week, chance);
                VisitPlace where =
                        new VisitPlace(visit, enclosure, points.get(place).id());
                UUID key = key(visit + " point " + place);
                logging.log(story.visitor(), new Entry(key, where, story.meter().id(), uvi, taken));
            }
        }
    }

    /** Rounded as the meter shows it; the last one without scatter, so that the demo shows every state. */
    private static double value(Spot spot, int week, Random chance) {
        double share = (week - 1.0) / (WEEKS - 1);
        double scatter = week == WEEKS ? 0 : SCATTER * chance.nextGaussian();
        double uvi = (spot.firstUvi() + share * (spot.lastUvi() - spot.firstUvi())) * (1 + scatter);
        return Math.round(uvi * 10) / 10.0;
    }

    private static UUID key(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    /** Who reads, with what, until when. */
    record Story(DemoTeam.Members members, MeterFacts meter, Instant now) {
        /** A time of the morning, some whole days before the story ends. */
        Instant daysAgo(int days) {
            return now.truncatedTo(ChronoUnit.DAYS).minus(Duration.ofDays(days)).plus(MORNING);
        }

        Visitor visitor() {
            return new Visitor(members.siteId(), members.keeper());
        }
    }
}
