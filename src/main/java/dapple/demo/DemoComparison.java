package dapple.demo;

import dapple.comparison.Comparisons;
import dapple.comparison.NewComparison;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.Given;
import dapple.site.Settings;
import dapple.site.Sites;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** In the demo two meters were compared some weeks ago, and one reading of today waits for a second person. */
@Component
@Profile("demo")
class DemoComparison {
    private static final Duration AGO = Duration.ofDays(40);
    private static final Duration BETWEEN = Duration.ofMinutes(2);

    /** Whether it was drawn by chance or not, so that the demo always shows one. */
    private static final String WAITS =
            "insert into blind_repeat (site_id, reading_id) select r.site_id, r.id from reading r"
                    + " where r.id = :id and not exists (select 1 from blind_repeat b where b.reading_id = r.id)";

    /** What M1 and M2 showed, UVI. */
    private static final List<Spot> COMPARED = List.of(
            new Spot("E01", "P1", 5.1, 5.2),
            new Spot("E02", "P1", 3.5, 3.5),
            new Spot("E03", "P2", 2.2, 2.3),
            new Spot("E15", "P1", 4.6, 4.7),
            new Spot("E16", "P2", 1.5, 1.5));

    private static final Spot READ_TODAY = new Spot("E16", "P1", 4.5, 4.5);

    private final Comparisons comparisons;
    private final Enclosures enclosures;
    private final ReadingLogging logging;
    private final Sites sites;
    private final JdbcClient database;

    DemoComparison(
            Comparisons comparisons, Enclosures enclosures, ReadingLogging logging, Sites sites, JdbcClient database) {
        this.comparisons = comparisons;
        this.enclosures = enclosures;
        this.logging = logging;
        this.sites = sites;
        this.database = database;
    }

    void compare(DemoTeam.Members members, Stock stock, Instant now, Consumer<Instant> time) {
        Instant begun = now.minus(AGO);
        time.accept(begun);
        MeterFacts first = Given.of(stock.meters().get("M1"));
        MeterFacts second = Given.of(stock.meters().get("M2"));
        comparisons.begin(new NewComparison(
                members.siteId(),
                members.supervisor(),
                key("comparison"),
                Quantity.UV_INDEX,
                List.of(first.id(), second.id()),
                COMPARED.stream().map(spot -> point(members, stock, spot).id()).toList()));
        Visitor visitor = new Visitor(members.siteId(), members.supervisor());
        Instant at = begun;
        for (Spot spot : COMPARED) {
            at = at.plus(BETWEEN);
            time.accept(at);
            PointFacts point = point(members, stock, spot);
            log(visitor, point, first, spot.first(), at);
            log(visitor, point, second, spot.second(), at);
        }
        time.accept(now);
        repeat(members, stock, now);
    }

    private void repeat(DemoTeam.Members members, Stock stock, Instant now) {
        Settings asking = Settings.USUAL.withBlindRepeats();
        sites.settle(members.siteId(), sites.settingsVersion(members.siteId()), asking);
        Visitor keeper = new Visitor(members.siteId(), members.keeper());
        PointFacts point = point(members, stock, READ_TODAY);
        MeterFacts meter = Given.of(stock.meters().get("M1"));
        long reading = log(keeper, point, meter, READ_TODAY.first(), now.minus(Duration.ofHours(1)));
        database.sql(WAITS).param("id", reading).update();
    }

    private long log(Visitor visitor, PointFacts point, MeterFacts meter, double amount, Instant at) {
        VisitPlace place = new VisitPlace(
                key(visitor.personId() + " at " + point.enclosureId() + " " + at), point.enclosureId(), point.id());
        return logging.log(visitor, new Entry(key(place + " with " + meter.code()), place, meter.id(), amount, at));
    }

    private PointFacts point(DemoTeam.Members members, Stock stock, Spot spot) {
        long enclosure = Given.of(stock.enclosures().get(spot.enclosure()));
        return enclosures.pointsOf(members.siteId(), enclosure).stream()
                .filter(point -> point.code().equals(spot.point()))
                .findFirst()
                .orElseThrow();
    }

    private static UUID key(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    /** What there is, by code. */
    record Stock(Map<String, MeterFacts> meters, Map<String, Long> enclosures) {}

    private record Spot(String enclosure, String point, double first, double second) {}
}
