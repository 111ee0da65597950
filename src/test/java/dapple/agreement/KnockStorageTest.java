package dapple.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.lamp.LampModelFacts;
import dapple.light.judging.PointRole;
import dapple.light.metrology.Compared;
import dapple.light.metrology.SimulatedReadings;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.FirstRig;
import dapple.rig.LampStep;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigExamples;
import dapple.rig.Rigs;
import dapple.site.Given;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * The whole way from stored readings to a finding: a dozen enclosures of a simulated collection, of which it is
 * known which meter was knocked, when and by how much.
 */
@StorageTest
class KnockStorageTest {
    private static final long SEED = 134;

    /** ln: it reads 11 % less. */
    private static final double KNOCK = -0.12;

    private static final int WEEKS_AFTER = 4;

    /** What is asked of the search: docs/physics.md, Meters. */
    private static final Duration IN_TIME = Duration.ofDays(21);

    @Autowired
    private TestCollection collection;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private Agreements agreements;

    @Autowired
    private MeterFindings findings;

    @Autowired
    private Clock clock;

    private final Map<String, MeterFacts> meters = new HashMap<>();
    private final Map<String, Long> enclosures = new HashMap<>();
    private final Map<String, PointFacts> points = new HashMap<>();
    private final Map<Long, String> lit = new HashMap<>();
    private final List<Object[]> visits = new ArrayList<>();
    private final List<Object[]> rows = new ArrayList<>();
    private SiteFacts site;
    private SignedIn keeper;
    private LampModelFacts model;
    private Duration later;
    private SimulatedReadings simulated;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.SUPERVISOR);
        model = collection.lampModel(site, LampClass.TUBE_T5);
        simulated = SimulatedReadings.of(SEED, KNOCK, WEEKS_AFTER);
        List<Compared> readings = simulated.readings();
        later = Duration.between(readings.get(readings.size() - 1).at(), clock.instant());
    }

    @Test
    void aKnockIsFoundInTheReadingsOfOneMeterAlone() {
        List<Compared> readings = simulated.readings();
        readings.forEach(this::take);
        store();
        agreements.renew(site.id());
        Instant knockedAt = simulated.knockedAt().plus(later);
        assertThat(findings.open(site.id())).singleElement().satisfies(found -> {
            assertThat(found.meterId())
                    .contains(Given.of(meters.get(simulated.knockedMeter())).id());
            assertThat(found.kind()).isEqualTo(FindingKind.KNOCKED);
            assertThat(found.lnInterval().contains(KNOCK)).isTrue();
            assertThat(found.foundAt()).isBefore(knockedAt.plus(IN_TIME));
        });
    }

    private void take(Compared reading) {
        MeterFacts meter = meters.computeIfAbsent(reading.meter(), name -> collection.meter(site));
        String door = SimulatedReadings.door(reading);
        long enclosure = enclosures.computeIfAbsent(door, name -> collection.emptyEnclosure(site));
        PointFacts point = points.computeIfAbsent(
                reading.point(),
                name -> collection.point(
                        site, enclosure, "P" + (name.charAt(name.length() - 1) - '0'), PointRole.BASKING));
        Instant at = reading.at().plus(later);
        light(enclosure, reading.lamps().key(), at.minusSeconds(60));
        UUID visit = UUID.randomUUID();
        OffsetDateTime then = at.atOffset(ZoneOffset.UTC);
        visits.add(new Object[] {site.id(), enclosure, keeper.personId(), visit, then});
        double shown = Math.rint(10 * Math.exp(reading.lnAmount())) / 10;
        rows.add(new Object[] {
            site.id(), visit, point.id(), meter.id(), shown, then, then, keeper.personId(), UUID.randomUUID()
        });
    }

    /** As logged, without a verdict on each, which takes most of the time. */
    private void store() {
        database.batchUpdate(
                "insert into visit (site_id, enclosure_id, person_id, entry_key, begun_at) values (?, ?, ?, ?, ?)",
                visits);
        database.batchUpdate(
                "insert into reading (site_id, visit_id, point_id, meter_id, quantity, amount, facing, held_as_asked,"
                        + " taken_at, recorded_at, recorded_by, entry_key) values (?,"
                        + " (select id from visit where entry_key = ?), ?, ?, 'UV_INDEX', ?, 'STRONGEST', true,"
                        + " ?, ?, ?, ?)",
                rows);
    }

    /** A lamp at first, and another one whenever the simulated house says so. */
    private void light(long enclosure, String key, Instant at) {
        String before = lit.put(enclosure, key);
        if (key.equals(before)) {
            return;
        }
        RigEntry entry =
                new RigEntry(site.id(), enclosure, at, "", keeper.personId(), UUID.randomUUID(), Optional.empty());
        long lamp = collection.lamp(site, model).id();
        if (before == null) {
            List<LampStep.Fit> first = List.of(new LampStep.Fit(lamp, RigExamples.hanging("tube")));
            changing.setUpFirst(entry, new FirstRig(first, List.of(), List.of()));
        } else {
            long hanging = rigs.at(site.id(), enclosure, at).fittings().get(0).id();
            changing.make(entry, new LampStep.Swap(hanging, lamp));
        }
    }
}
