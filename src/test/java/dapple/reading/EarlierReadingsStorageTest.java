package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.Targets;
import dapple.target.ZoneLimits;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

/** What a first target says of readings that were taken before it was approved. */
@StorageTest
class EarlierReadingsStorageTest {
    private static final UvZone ZONE_3 = new UvZone(3, LightMethod.SUNBEAM);

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private LatestReadings latest;

    @Autowired
    private RejudgingWork work;

    @Autowired
    private Targets targets;

    @Autowired
    private ZoneLimits zoneLimits;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn person;
    private SpeciesFacts species;
    private MeterFacts meter;
    private Home home;
    private Instant begin;

    @BeforeEach
    void settleIn() {
        site = collection.site();
        person = collection.person(site, Role.KEEPER, Role.SUPERVISOR);
        species = collection.species(site, "Laudakia stellio");
        meter = collection.meter(site);
        home = collection.home(site, person, species);
        begin = clock.instant().minus(Duration.ofMinutes(50));
    }

    @Test
    void aSiteThatWasNeverReadHasNone() {
        assertThat(latest.existAt(site.id())).isFalse();
    }

    @Test
    void aSiteThatWasReadHasSome() {
        read(home, 1, 4.0);
        assertThat(latest.existAt(site.id())).isTrue();
    }

    @Test
    void theNewestIsJudgedBeforeAnybodyLooks() {
        read(home, 1, 4.0);
        long newest = read(home, 2, 9.3);
        approve(true);
        assertThat(verdicts(newest)).containsExactly("NO_TARGET replaced", "OVER_CEILING standing");
    }

    @Test
    void allAreJudgedAndWhatPeopleWereToldIsKept() {
        List<Long> readings = new ArrayList<>();
        for (int minute = 0; minute < 40; minute++) {
            readings.add(read(home, minute, 4.0));
        }
        approve(true);
        finish();
        assertThat(readings)
                .allSatisfy(
                        one -> assertThat(verdicts(one)).containsExactly("NO_TARGET replaced", "ON_TARGET standing"));
    }

    @Test
    void noneIsJudgedAnewWhereATargetCountsFromItsApprovalOn() {
        long reading = read(home, 1, 9.3);
        approve(false);
        assertThat(verdicts(reading)).containsExactly("NO_TARGET standing");
        assertThat(dues()).isEmpty();
    }

    @Test
    void thoseOfEnclosuresThatTheSpeciesLeftAreJudgedToo() {
        long reading = read(home, 1, 4.0);
        Home next = collection.home(site, person, species);
        database.update(
                "update stay set to_at = ?, open_animal_id = null where enclosure_id = ?",
                Timestamp.from(clock.instant()),
                home.enclosureId());
        read(next, 2, 4.0);
        approve(true);
        finish();
        assertThat(verdicts(reading)).containsExactly("NO_TARGET replaced", "ON_TARGET standing");
    }

    @Test
    void thoseOfOtherSpeciesStay() {
        Home others = collection.home(site, person, collection.species(site, "Uromastyx geyri"));
        long reading = read(others, 1, 4.0);
        approve(true);
        finish();
        assertThat(verdicts(reading)).containsExactly("NO_TARGET standing");
    }

    @Test
    void oneThatIsTakenInAfterwardsIsJudgedAtOnce() {
        approve(true);
        assertThat(verdicts(read(home, 1, 9.3))).containsExactly("OVER_CEILING standing");
    }

    private void approve(boolean isForEarlierReadings) {
        Approval approval =
                new Approval(species.id(), ZONE_3, zoneLimits.of(ZONE_3), person.personId(), "agreed with the team");
        targets.approve(site.id(), approval.forEarlierReadings(isForEarlierReadings));
    }

    private long read(Home where, int minute, double uvi) {
        VisitPlace place = new VisitPlace(
                UUID.randomUUID(), where.enclosureId(), where.basking().id());
        Instant at = begin.plus(Duration.ofMinutes(minute));
        return logging.log(Visitor.of(person), new Entry(UUID.randomUUID(), place, meter.id(), uvi, at));
    }

    private List<Long> dues() {
        return database.queryForList("select id from rejudging where species_id = ?", Long.class, species.id());
    }

    /** What the queue does behind the scenes: done twice, it does no harm. */
    private void finish() {
        long due = Objects.requireNonNull(dues().get(0));
        while (work.goOn(due)) {
            assertThat(dues()).hasSize(1);
        }
    }

    private List<String> verdicts(long reading) {
        return database.queryForList(
                "select state || case when replaced_at is null then ' standing' else ' replaced' end "
                        + "from verdict where reading_id = ? order by id",
                String.class,
                reading);
    }
}
