package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.lang.management.ManagementFactory;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

/** How long a million readings take, into a database on the disk; see docs/performance.md. Not part of the build. */
@StorageTest
class IntakeMeasure {
    private static final int ENCLOSURES = 40;
    private static final int READINGS = Integer.getInteger("intake.readings", 1_000_000);

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingIntake intake;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Clock clock;

    @Test
    void aMillionReadings() {
        SiteFacts site = collection.site();
        SignedIn keeper = collection.person(site, Role.KEEPER);
        MeterFacts meter = collection.meter(site);
        SpeciesFacts species = collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        List<Home> homes = IntStream.range(0, ENCLOSURES)
                .mapToObj(at -> collection.home(site, keeper, species))
                .toList();
        Instant begin = clock.instant();
        Iterator<SheetReading> readings = IntStream.range(0, READINGS / ENCLOSURES / 4)
                .boxed()
                .flatMap(minute -> homes.stream().flatMap(home -> visit(home, meter, begin.plusSeconds(60L * minute))))
                .iterator();
        long started = System.nanoTime();
        SheetsTaken taken =
                transaction.execute(status -> intake.take(new Visitor(site.id(), keeper.personId()), readings));
        Duration took = Duration.ofNanos(System.nanoTime() - started);
        System.out.println("MEASURED " + taken + " in " + took.toMillis() + " ms, peak heap " + peak() + " MB");
        assertThat(taken).extracting(SheetsTaken::stored).isEqualTo((long) READINGS);
    }

    private static Stream<SheetReading> visit(Home home, MeterFacts meter, Instant at) {
        double[] amounts = {4.5, 2.0, 0.1, 5.0};
        return IntStream.range(0, 4)
                .mapToObj(point -> new SheetReading(
                        home.enclosureId(),
                        home.points().get(point).id(),
                        meter.id(),
                        amounts[point],
                        at,
                        false,
                        Optional.empty()));
    }

    private static long peak() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                        .filter(pool ->
                                pool.getName().contains("Old") || pool.getName().contains("Tenured"))
                        .mapToLong(pool -> pool.getPeakUsage().getUsed())
                        .sum()
                >> 20;
    }
}
