package dapple.demo;

import dapple.demo.DemoRows.Further;
import dapple.demo.DemoRows.Space;
import dapple.demo.DemoRows.Spot;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.reading.Visitor;
import dapple.site.Given;
import dapple.species.SpeciesFacts;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;

/** Who reads what, with what, when: two years of weeks that end now. */
record DemoStory(
        DemoTeam.Members members,
        Tables tables,
        DemoPast past,
        Map<String, MeterFacts> meters,
        Map<String, SpeciesFacts> species,
        Instant now) {
    /** Of the record, the newest counted last. */
    static final int WEEKS = 104;

    /** Of these, so many last ones of the first enclosures stand in a table, with what their readings come to. */
    static final int TOLD_WEEKS = 8;

    private static final Duration WEEK = Duration.ofDays(7);
    private static final Duration TOLD = Duration.ofDays(90);
    private static final Duration BETWEEN_ENCLOSURES = Duration.ofMinutes(5);
    private static final Duration MORNING = Duration.ofHours(10);
    private static final Duration BEFORE_THE_ROUND = Duration.ofHours(1);

    /** When recording began. */
    static Instant beginBefore(Instant now) {
        return now.minus(WEEK.multipliedBy(WEEKS));
    }

    /** Since when the tables tell of the first enclosures. */
    static Instant toldBefore(Instant now) {
        return now.minus(TOLD);
    }

    Instant begin() {
        return beginBefore(now);
    }

    Instant told() {
        return toldBefore(now);
    }

    DemoRows rows() {
        return tables.rows();
    }

    /** A time of the morning, some whole days before the story ends. */
    Instant daysAgo(int days) {
        return now.truncatedTo(ChronoUnit.DAYS).minus(Duration.ofDays(days)).plus(MORNING);
    }

    /** When an enclosure is read in a week, counted from 1. */
    Instant readAt(Space space, int week) {
        return daysAgo(space.lastReadDaysAgo())
                .minus(WEEK.multipliedBy(WEEKS - week))
                .plus(BETWEEN_ENCLOSURES.multipliedBy(space.codeNumber()));
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

    /** What the tables tell of a point and a quantity where their weeks begin. */
    Optional<Double> firstTold(Spot spot, Quantity quantity) {
        if (quantity == Quantity.UV_INDEX) {
            return spot.firstUvi();
        }
        return rows().furtherAt(spot).stream()
                .filter(further -> meter(further.meter()).quantity() == quantity)
                .map(Further::first)
                .findFirst();
    }

    Visitor keeper() {
        return new Visitor(members.siteId(), members.keeper());
    }

    Visitor supervisor() {
        return new Visitor(members.siteId(), members.supervisor(), true);
    }

    /** What the demo is told from. */
    record Tables(DemoRows rows, DemoRigRows rigRows) {
        static Tables read() {
            return new Tables(DemoRows.read(), DemoRigRows.read());
        }
    }
}
