package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.meter.CalibrationFactors;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.meter.RangeFactor;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What is judged rests on what was so, not on when it was entered. */
@StorageTest
class RejudgingStorageTest {
    private static final int WEEKS = 8;
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final double[] FACTORS = {0.5, 0.8, 1.0, 1.25, 2.0};

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Readings readings;

    @Autowired
    private Rejudging rejudging;

    @Autowired
    private RejudgingWork work;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Meters meters;

    @Autowired
    private Animals animals;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private PlatformTransactionManager transactions;

    @Autowired
    private Clock clock;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 3);
    }

    /** Once with each fact entered when it happened, once with all of them entered late and shuffled. */
    @ParameterizedTest
    @MethodSource("seeds")
    void judgesTheSameWhetherFactsComeInTimeOrLate(long seed) {
        assertThat(told(seed, Arrives.LATE)).isNotEmpty().isEqualTo(told(seed, Arrives.IN_TIME));
    }

    private List<Map<String, Object>> told(long seed, Arrives arrives) {
        Collected collected = new Collected(seed);
        collected.live(arrives);
        return collected.verdicts();
    }

    @Test
    void aLateCalibrationJudgesAnewAndKeepsWhatPeopleWereTold() {
        Collected collected = new Collected(1);
        long reading = collected.read(1, collected.home.basking(), 4.0);
        collected.calibrate(collected.begin, 0.5);
        assertThat(verdicts(reading)).containsExactly("ON_TARGET replaced", "TOO_WEAK standing");
    }

    /** 4.0 lies in the range above 2 to 10: 4.0 × 0.5 = 2.0, off target; the factor of the lower range would leave it on target. */
    @Test
    void aLateCalibrationByRangesJudgesByTheRangeOfWhatWasShown() {
        Collected collected = new Collected(1);
        long reading = collected.read(1, collected.home.basking(), 4.0);
        collected.calibrate(
                collected.begin, new CalibrationFactors(0, List.of(new RangeFactor(2, 1), new RangeFactor(10, 0.5))));
        assertThat(verdicts(reading)).containsExactly("ON_TARGET replaced", "TOO_WEAK standing");
    }

    @Test
    void theNewestReadingFollowsALateFact() {
        Collected collected = new Collected(1);
        collected.read(1, collected.home.basking(), 4.0);
        collected.read(2, collected.home.basking(), 4.0);
        collected.planOff(1.5, 3);
        assertThat(collected.latest()).containsExactly("PLANNED_OFF 2");
    }

    @Test
    void theSameAgainReplacesNothing() {
        Collected collected = new Collected(1);
        long reading = collected.read(1, collected.home.basking(), 4.0);
        rejudging.enclosure(collected.site.id(), collected.home.enclosureId(), collected.begin);
        assertThat(verdicts(reading)).containsExactly("ON_TARGET standing");
    }

    @Test
    void whatIsOlderThanTheFactStays() {
        Collected collected = new Collected(1);
        long before = collected.read(1, collected.home.basking(), 4.0);
        long after = collected.read(3, collected.home.basking(), 4.0);
        collected.calibrate(collected.week(2), 0.5);
        assertThat(verdicts(before)).containsExactly("ON_TARGET standing");
        assertThat(verdicts(after)).containsExactly("ON_TARGET replaced", "TOO_WEAK standing");
    }

    @Test
    void manyVisitsAreJudgedAnewInBatches() {
        Collected collected = new Collected(1);
        for (int visit = 0; visit < 60; visit++) {
            collected.read(visit / 10.0, collected.home.basking(), 4.0);
        }
        database.update("insert into rejudging (site_id, enclosure_id, since_at, asked_at, last_visit_id, visits) "
                + "select e.site_id, e.id, v.begun_at - interval '1' day, v.begun_at, 0, 0 from enclosure e "
                + "join visit v on v.id = (select min(id) from visit where enclosure_id = e.id) where e.id = "
                + collected.home.enclosureId());
        long due = Objects.requireNonNull(database.queryForObject("select max(id) from rejudging", Long.class));
        assertThat(work.goOn(due)).isTrue();
        assertThat(work.goOn(due)).isFalse();
        assertThat(database.queryForObject(
                        "select visits from rejudging where finished_at is not null and id = ?", Integer.class, due))
                .isEqualTo(60);
    }

    /** The last visit is kept locked meanwhile, behind the first batch, which is judged before the wish returns. */
    @Test
    void anEnclosureIsUnderWayUntilTheLastVisitIsJudged() {
        Collected collected = new Collected(1);
        for (int visit = 0; visit < 60; visit++) {
            collected.read(visit / 10.0, collected.home.basking(), 4.0);
        }
        long siteId = collected.site.id();
        long enclosureId = collected.home.enclosureId();
        new TransactionTemplate(transactions).executeWithoutResult(locked -> {
            database.queryForList(
                    "select id from visit where id = (select max(id) from visit where enclosure_id = ?) for update",
                    enclosureId);
            CompletableFuture.runAsync(() -> rejudging.enclosure(siteId, enclosureId, collected.begin))
                    .join();
            assertThat(rejudging.underWay(siteId)).containsExactly(enclosureId);
            assertThat(rejudging.underWay(siteId + 1)).isEmpty();
        });
        await().atMost(PATIENCE)
                .untilAsserted(() -> assertThat(rejudging.underWay(siteId)).isEmpty());
    }

    private List<String> verdicts(long reading) {
        return database.queryForList(
                "select state || case when replaced_at is null then ' standing' else ' replaced' end "
                        + "from verdict where reading_id = ? order by id",
                String.class,
                reading);
    }

    private enum Arrives {
        IN_TIME,
        LATE
    }

    /** One enclosure over some weeks, in which things happen by chance; weeks are counted from its begin. */
    private final class Collected {
        private final Random chance;
        private final SiteFacts site = collection.site();
        private final SignedIn keeper = collection.person(site, Role.SUPERVISOR);
        private final MeterFacts meter = collection.meter(site);
        private final Home home;
        private final Instant begin;
        private final Map<Long, Double> weekOf = new HashMap<>();

        Collected(long seed) {
            chance = new Random(seed);
            SpeciesFacts resident = species("Pogona vitticeps", 3);
            home = collection.home(site, keeper, resident);
            begin = clock.instant();
        }

        private SpeciesFacts species(String name, int zone) {
            return collection.species(site, keeper, name, new UvZone(zone, LightMethod.SUNBEAM));
        }

        Instant week(double week) {
            return begin.plusSeconds(Math.round(week * Duration.ofDays(7).toSeconds()));
        }

        /** Plays what chance has planned. Stays and corrections keep their order among themselves. */
        void live(Arrives arrives) {
            List<Event> events = new ArrayList<>(readings());
            List<Event> facts = facts();
            if (arrives == Arrives.IN_TIME) {
                events.addAll(facts);
                events.sort(Comparator.comparing(Event::week));
            } else {
                List<Event> others = new ArrayList<>(
                        facts.stream().filter(fact -> !fact.isStay()).toList());
                Collections.shuffle(others, chance);
                events.addAll(others);
                facts.stream().filter(Event::isStay).forEach(events::add);
            }
            events.forEach(event -> event.happen().run());
            rejudging.enclosure(site.id(), home.enclosureId(), begin);
        }

        private List<Event> readings() {
            List<Event> events = new ArrayList<>();
            for (int week = 1; week <= WEEKS; week++) {
                UUID visit = UUID.randomUUID();
                double at = week;
                for (PointFacts point : home.points()) {
                    double shown = Math.round(chance.nextDouble() * 90) / 10.0;
                    boolean mistyped = chance.nextInt(4) == 0;
                    double right = Math.round(chance.nextDouble() * 90) / 10.0;
                    events.add(new Event(at, false, () -> {
                        long id = read(visit, at, point, shown);
                        if (mistyped) {
                            Correction correction = new Correction(UUID.randomUUID(), right, "mistyped");
                            weekOf.put(logging.correct(Visitor.of(keeper), id, correction), at);
                        }
                    }));
                }
            }
            return events;
        }

        private List<Event> facts() {
            double calibrated = between();
            double again = between();
            double off = between();
            double joins = between();
            double leaves = joins + chance.nextDouble() * 2;
            CalibrationFactors first = factors();
            CalibrationFactors second = factors();
            SpeciesFacts newcomers = species("Varanus acanthurus", 4);
            long newcomer = animals.add(site.id(), new NewAnimal("newcomer", "Newcomer", newcomers.id()))
                    .id();
            long elsewhere = collection.home(site, keeper, newcomers).enclosureId();
            return List.of(
                    new Event(calibrated, false, () -> calibrate(week(calibrated), first)),
                    new Event(again, false, () -> calibrate(week(again), second)),
                    new Event(off, false, () -> planOff(off, off + 1.5)),
                    new Event(joins, true, () -> move(newcomer, home.enclosureId(), joins)),
                    new Event(leaves, true, () -> move(newcomer, elsewhere, leaves)));
        }

        /** One for all amounts, or two or three ranges with borders on displayed amounts. */
        private CalibrationFactors factors() {
            int ranges = chance.nextInt(3);
            if (ranges == 0) {
                return CalibrationFactors.of(FACTORS[chance.nextInt(5)]);
            }
            List<RangeFactor> rising = IntStream.rangeClosed(0, ranges)
                    .mapToObj(place -> new RangeFactor(1.5 + 2.5 * place, FACTORS[chance.nextInt(5)]))
                    .toList();
            return new CalibrationFactors(0, rising);
        }

        /** Between two rounds: rounds are on whole weeks. */
        private double between() {
            return chance.nextInt(WEEKS) + 0.1 + 0.8 * chance.nextDouble();
        }

        private void move(long animal, long enclosure, double week) {
            animals.move(site.id(), new Arrival(animal, enclosure, week(week), keeper.personId()));
        }

        void calibrate(Instant from, double factor) {
            calibrate(from, CalibrationFactors.of(factor));
        }

        private void calibrate(Instant from, CalibrationFactors factors) {
            NewCalibration calibration =
                    new NewCalibration(from, factors, LocalDate.of(2040, 1, 1), "by " + factors.at(1));
            meters.calibrate(site.id(), meter.id(), calibration, keeper.personId());
        }

        void planOff(double from, double to) {
            PlannedOffTime time =
                    new PlannedOffTime(home.enclosureId(), week(from), Optional.of(week(to)), "winter rest");
            enclosures.planOff(site.id(), time, keeper.personId());
        }

        long read(double week, PointFacts point, double uvi) {
            return read(UUID.randomUUID(), week, point, uvi);
        }

        private long read(UUID visit, double week, PointFacts point, double uvi) {
            VisitPlace place = new VisitPlace(visit, home.enclosureId(), point.id());
            Entry entry = new Entry(UUID.randomUUID(), place, meter.id(), uvi, week(week));
            long id = logging.log(Visitor.of(keeper), entry);
            weekOf.put(id, week);
            return id;
        }

        /** The standing verdicts of every reading that counts, and the newest readings with the week since when they are so. */
        List<Map<String, Object>> verdicts() {
            List<Map<String, Object>> rows = database.queryForList(
                    "select p.code, r.id as reading, r.amount as shown, s.scientific_name, d.state, d.factor, d.amount, d.low, "
                            + "d.high, d.may_exceed, d.finer_than_meter, d.no_gradient, c.certificate, "
                            + "l.state as newest, l.state_since "
                            + "from verdict d join reading r on r.id = d.reading_id "
                            + "join measuring_point p on p.id = r.point_id left join species s on s.id = d.species_id "
                            + "left join calibration c on c.id = d.calibration_id "
                            + "left join latest_reading l on l.reading_id = r.id "
                            + "where d.site_id = ? and d.replaced_at is null and not exists "
                            + "(select 1 from reading n where n.supersedes_id = r.id) order by r.taken_at, r.id, s.scientific_name",
                    site.id());
            rows.forEach(this::countFromTheBegin);
            return rows;
        }

        /** Ids and instants differ from one collection to the next. */
        private void countFromTheBegin(Map<String, Object> row) {
            row.put("reading", Optional.ofNullable(weekOf.get(id(row))));
            Object since = row.remove("state_since");
            row.put("since", since == null ? "" : String.valueOf(weeks(since)));
        }

        private static long id(Map<String, Object> row) {
            return row.get("reading") instanceof Number id ? id.longValue() : 0;
        }

        private double weeks(Object instant) {
            Instant at =
                    instant instanceof OffsetDateTime there ? there.toInstant() : ((Timestamp) instant).toInstant();
            return Math.round(10.0
                            * Duration.between(begin, at).toSeconds()
                            / Duration.ofDays(7).toSeconds())
                    / 10.0;
        }

        List<String> latest() {
            return RejudgingStorageTest.this
                    .readings
                    .latestIn(site.id(), home.enclosureId(), home.points())
                    .values()
                    .stream()
                    .flatMap(List::stream)
                    .map(view -> view.state().orElseThrow() + " "
                            + Math.round(weeks(
                                    OffsetDateTime.ofInstant(view.stateSince().orElseThrow(), ZoneOffset.UTC))))
                    .toList();
        }
    }

    /** Something that happens in a week. */
    private record Event(double week, boolean isStay, Runnable happen) {}
}
