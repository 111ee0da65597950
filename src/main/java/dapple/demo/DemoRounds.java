package dapple.demo;

import dapple.demo.DemoRows.Further;
import dapple.demo.DemoRows.Instead;
import dapple.demo.DemoRows.Space;
import dapple.demo.DemoRows.Spot;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Served;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.Given;
import dapple.species.SpeciesFacts;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
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
    private static final Duration BEFORE_THE_ROUND = Duration.ofHours(1);
    private static final double SCATTER = 0.03;
    private static final long SEED = 20_260_901;

    private final Enclosures enclosures;
    private final ReadingLogging logging;

    DemoRounds(Enclosures enclosures, ReadingLogging logging) {
        this.enclosures = enclosures;
        this.logging = logging;
    }

    /** Adds the points of an enclosure and reads them weekly until its last reading. */
    void walk(Story story, long enclosure, Space space, Consumer<Instant> time) {
        List<Stop> stops = story.rows().pointsOf(space).stream()
                .map(spot -> stop(story, enclosure, spot))
                .toList();
        Random chance = new Random(SEED + space.code().hashCode());
        for (int week = 1; week <= WEEKS; week++) {
            Instant at = story.daysAgo(space.lastReadDaysAgo())
                    .minus(WEEK.multipliedBy(WEEKS - week))
                    .plus(BETWEEN_ENCLOSURES.multipliedBy(space.codeNumber()));
            double share = story.changed(space)
                    .map(change -> at.isBefore(change) ? 0.0 : 1.0)
                    .orElse((week - 1.0) / (WEEKS - 1));
            UUID visit = key(space.code() + " week " + week);
            for (int place = 0; place < stops.size(); place++) {
                Instant taken = at.plus(BETWEEN_POINTS.multipliedBy(place));
                time.accept(taken);
                double scatter = week == WEEKS ? 0 : SCATTER * chance.nextGaussian();
                VisitPlace where = new VisitPlace(
                        visit, enclosure, stops.get(place).point().id());
                Optional<Instead> instead = story.rows().insteadAt(space, week);
                stops.get(place).readings().stream()
                        .map(read -> story.by(instead, read))
                        .forEach(read -> {
                            UUID key = key(where + " with " + read.meter().code());
                            double amount = read.amount(share, scatter);
                            logging.log(
                                    story.visitor(),
                                    new Entry(key, where, read.meter().id(), amount, taken));
                        });
            }
        }
    }

    private Stop stop(Story story, long enclosure, Spot spot) {
        List<Read> readings = Stream.concat(
                        Stream.of(new Read(story.meter("M1"), spot.firstUvi(), spot.lastUvi())),
                        story.rows().furtherAt(spot).stream().map(story::read))
                .toList();
        List<Quantity> asked =
                readings.stream().map(read -> read.meter().quantity()).toList();
        long site = story.members().siteId();
        PointFacts point = enclosures.addPoint(site, enclosure, spot.asking(asked));
        spot.serves()
                .ifPresent(name -> enclosures.serve(site, point.id(), Served.species(Set.of(story.speciesId(name)))));
        return new Stop(point, readings);
    }

    /** A point, and what is read there. */
    private record Stop(PointFacts point, List<Read> readings) {}

    /** The first and the last amount of a quantity. */
    private record Read(MeterFacts meter, double first, double last) {
        /** Rounded as the meter shows it; the last one comes without scatter, so that the demo shows every state. */
        double amount(double share, double scatter) {
            double resolution = meter.uncertainty().resolution();
            double amount = (first + share * (last - first)) * (1 + scatter);
            return BigDecimal.valueOf(Math.round(amount / resolution))
                    .multiply(BigDecimal.valueOf(resolution))
                    .doubleValue();
        }
    }

    /** The newest visit at an enclosure, by its code. */
    static UUID lastVisit(String enclosure) {
        return key(enclosure + " week " + WEEKS);
    }

    private static UUID key(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    /** Who reads what, with what, until when. */
    record Story(
            DemoTeam.Members members,
            DemoRows rows,
            Map<String, MeterFacts> meters,
            Map<String, SpeciesFacts> species,
            Instant now) {
        /** A time of the morning, some whole days before the story ends. */
        Instant daysAgo(int days) {
            return now.truncatedTo(ChronoUnit.DAYS).minus(Duration.ofDays(days)).plus(MORNING);
        }

        /** When a rig was changed, before the round of that day. */
        Optional<Instant> changed(Space space) {
            return space.changedDaysAgo().map(days -> daysAgo(days).minus(BEFORE_THE_ROUND));
        }

        MeterFacts meter(String code) {
            return Given.of(meters.get(code));
        }

        long speciesId(String scientificName) {
            return Given.of(species.get(scientificName)).id();
        }

        /** The same by the meter that was at hand, where it reads the same quantity. */
        private Read by(Optional<Instead> instead, Read read) {
            return instead.filter(
                            one -> meter(one.meter()).quantity() == read.meter().quantity())
                    .map(one -> new Read(meter(one.meter()), one.times() * read.first(), one.times() * read.last()))
                    .orElse(read);
        }

        private Read read(Further further) {
            return new Read(meter(further.meter()), further.first(), further.last());
        }

        Visitor visitor() {
            return new Visitor(members.siteId(), members.keeper());
        }
    }
}
