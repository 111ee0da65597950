package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.round.Cadence;
import dapple.round.DueDays;
import dapple.round.GivenTo;
import dapple.round.PlanDetails;
import dapple.round.RoundArranging;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * How long a year's record of a million readings takes and how much memory, from a database on the disk; see
 * docs/performance.md. Not part of the build.
 */
@StorageTest
class ExportMeasure {
    private static final int ENCLOSURES = 40;
    private static final int READINGS = Integer.getInteger("export.readings", 1_000_000);
    private static final int DAYS = 360;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Archives archives;

    @Autowired
    private RoundArranging rounds;

    @Autowired
    private JdbcClient database;

    @Test
    void aYearOfAMillionReadings(@TempDir Path folder) throws Exception {
        SiteFacts site = collection.site();
        SignedIn keeper = collection.person(site, Role.KEEPER);
        SpeciesFacts species = collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        MeterFacts meter = collection.meter(site);
        List<Long> homes = IntStream.range(0, ENCLOSURES)
                .mapToObj(at -> collection.home(site, keeper, species))
                .map(Home::enclosureId)
                .toList();
        LocalDate begin = LocalDate.now(site.timeZone()).minusDays(DAYS);
        DueDays daily = new DueDays(new Cadence.Every(1), begin, Optional.empty());
        rounds.add(site.id(), new PlanDetails("All", daily, new GivenTo.Holders(Role.KEEPER), homes));
        homes.forEach(enclosure -> fill(site, keeper, enclosure, meter, species));
        take(site, folder.resolve("year.zip"));
    }

    private void take(SiteFacts site, Path file) throws Exception {
        Instant now = Instant.now();
        ManagementFactory.getMemoryPoolMXBeans().forEach(pool -> pool.resetPeakUsage());
        long started = System.nanoTime();
        Manifest manifest;
        try (OutputStream to = Files.newOutputStream(file)) {
            manifest = archives.write(
                    ArchiveScope.Year.of(site, now.minus(Duration.ofDays(365)), now.plusSeconds(1)), "measure", to);
        }
        Duration took = Duration.ofNanos(System.nanoTime() - started);
        System.out.println("MEASURED a year's record of " + manifest.rows().get("reading") + " readings, "
                + (Files.size(file) >> 20) + " MB, in " + took.toMillis() + " ms, peak of old objects " + peak()
                + " MB of " + (Runtime.getRuntime().maxMemory() >> 20));
        assertThat(manifest.rows()).containsEntry("reading", (long) READINGS);
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            archive.check();
        }
    }

    /** In the embedded database's own words, an enclosure at a time. */
    private void fill(SiteFacts site, SignedIn keeper, long enclosure, MeterFacts meter, SpeciesFacts species) {
        int visits = READINGS / ENCLOSURES / 4;
        database.sql("insert into visit (site_id, enclosure_id, person_id, entry_key, begun_at, day_only)"
                        + " select :site, :enclosure, :person, random_uuid(), dateadd('second', -x * cast(:apart as bigint), cast(:now as timestamp with time zone)), false"
                        + " from system_range(1, :visits)")
                .param("site", site.id())
                .param("enclosure", enclosure)
                .param("person", keeper.personId())
                .param("apart", Duration.ofDays(DAYS).toSeconds() / visits)
                .param("now", Instant.now().atOffset(ZoneOffset.UTC))
                .param("visits", visits)
                .update();
        database.sql("insert into reading (site_id, visit_id, point_id, meter_id, quantity, amount, facing, taken_at,"
                        + " recorded_at, recorded_by, entry_key, held_as_asked) select v.site_id, v.id, p.id, :meter,"
                        + " 'UV_INDEX', mod(v.id, 70) / 10.0, 'STRONGEST', v.begun_at, v.begun_at, v.person_id,"
                        + " random_uuid(), true from visit v join measuring_point p on p.enclosure_id = v.enclosure_id"
                        + " where v.enclosure_id = :enclosure order by v.begun_at")
                .param("meter", meter.id())
                .param("enclosure", enclosure)
                .update();
        database.sql(
                        "insert into verdict (site_id, reading_id, species_id, target_version_id, state, amount, low, high,"
                                + " may_exceed, finer_than_meter, no_gradient, judged_at) select r.site_id, r.id, :species,"
                                + " (select max(t.id) from target_version t where t.species_id = :species),"
                                + " case when mod(r.id, 10) = 0 then 'TOO_WEAK' else 'ON_TARGET' end, r.amount, r.amount * 0.8,"
                                + " r.amount * 1.2, false, false, false, r.taken_at from reading r"
                                + " join visit v on v.id = r.visit_id where v.enclosure_id = :enclosure")
                .param("species", species.id())
                .param("enclosure", enclosure)
                .update();
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
