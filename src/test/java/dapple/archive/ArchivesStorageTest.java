package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.archive.Stock.Kept;
import dapple.people.NewPerson;
import dapple.site.Sites;
import dapple.testing.SpareDatabase;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** What goes out comes in again, from one database into the other. */
@StorageTest
class ArchivesStorageTest {
    private static final ArchiveScope EVERYTHING = new ArchiveScope.Everything();

    @Autowired
    private Archives archives;

    @Autowired
    private TakingIn takingIn;

    @Autowired
    private DataSource database;

    @Autowired
    private Sites sites;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Stock stock;

    @TempDir
    private Path folder;

    private Kept kept;

    @BeforeEach
    void furnish() throws Exception {
        kept = stock.make();
    }

    /** Into the embedded database, and on from there into one of the build's kind: a move there and back. */
    @Test
    void everythingComesBackCellByCell() throws Exception {
        try (SpareDatabase embedded = SpareDatabase.embedded();
                SpareDatabase last = SpareDatabase.ofTheBuild()) {
            load(written(EVERYTHING), embedded);
            load(written("again.zip", of(embedded), EVERYTHING), last);

            assertThat(Contents.of(last.pool())).isEqualTo(Contents.of(database));
        }
    }

    @Test
    void numbersAreCountedOnFromTheHighest() throws Exception {
        try (SpareDatabase last = SpareDatabase.ofTheBuild()) {
            load(written(EVERYTHING), last);
            JdbcClient rows = JdbcClient.create(last.pool());
            long highest = number(rows, "select max(id) from site");
            rows.sql("insert into site (name, time_zone, version) values ('next', 'UTC', 0)")
                    .update();

            assertThat(number(rows, "select max(id) from site")).isEqualTo(highest + 1);
        }
    }

    @Test
    void aYearHoldsWhatWasReadInItAndWhatIsStillNamed() throws Exception {
        try (SpareDatabase last = SpareDatabase.ofTheBuild()) {
            load(written(lastYear()), last);
            JdbcClient rows = JdbcClient.create(last.pool());

            assertThat(rows.sql("select id from reading order by id")
                            .query(Long.class)
                            .list())
                    .contains(kept.reading())
                    .doesNotContain(kept.oldReading());
        }
    }

    @Test
    void aYearOfThePastHoldsTheNewestReadingsTooSoThatReviewIsTheSame() throws Exception {
        Instant twoYearsAgo = Instant.now().minus(Duration.ofDays(740));
        ArchiveScope past = ArchiveScope.Year.of(kept.site(), twoYearsAgo, twoYearsAgo.plus(Duration.ofDays(30)));
        try (SpareDatabase last = SpareDatabase.ofTheBuild()) {
            load(written(past), last);

            assertThat(ofSite(last.pool(), "latest_reading")).isEqualTo(ofSite(database, "latest_reading"));
            assertThat(ofSite(last.pool(), "reading")).isEqualTo(ofSite(database, "reading"));
        }
    }

    @Test
    void aYearHoldsNothingOfAnotherSite() throws Exception {
        Kept other = stock.make();
        try (SpareDatabase last = SpareDatabase.ofTheBuild()) {
            load(written(lastYear()), last);

            assertThat(Contents.of(last.pool()).toString())
                    .contains(kept.keeper().signInName())
                    .doesNotContain(other.keeper().signInName());
        }
    }

    @Test
    void aYearHoldsNoPassword() throws Exception {
        try (SpareDatabase last = SpareDatabase.ofTheBuild()) {
            load(written(lastYear()), last);

            assertThat(JdbcClient.create(last.pool())
                            .sql("select distinct password_hash from person")
                            .query(String.class)
                            .list())
                    .containsExactly("{bcrypt}of no password");
        }
    }

    @Test
    void aSheetStandsInAYearAndIsSummed() throws Exception {
        StaticListableBeanFactory beans = new StaticListableBeanFactory();
        beans.addBean(
                "sheet",
                new RecordSheet(
                        "names.txt",
                        (making, to) -> to.write(bytes(making.span().site().name()))));
        Archives withSheet = new Archives(
                database,
                new JdbcTransactionManager(database),
                versions(),
                sites,
                beans.getBeanProvider(RecordSheet.class),
                Clock.systemUTC());

        try (ArchiveFile archive = ArchiveFile.open(written("year.zip", withSheet, lastYear()))) {
            archive.check();
            assertThat(archive.bytes("sheets/names.txt"))
                    .isEqualTo(bytes(kept.site().name()));
        }
    }

    /** Rooms are read early and readings late; all of it is as it was when the first was read. */
    @Test
    void whatIsStoredMeanwhileIsLeftOut() throws Exception {
        Map<String, Long> before = Contents.counts(database);
        Path file = folder.resolve("meanwhile.zip");
        Manifest manifest;
        try (OutputStream to = new Interrupted(Files.newOutputStream(file), this::makeMeanwhile)) {
            manifest = archives.write(EVERYTHING, "a test", to);
        }

        assertThat(manifest.rows()).isEqualTo(before);
        assertThat(Contents.counts(database)).isNotEqualTo(before);
    }

    private void makeMeanwhile() {
        CompletableFuture.runAsync(() -> {
                    try {
                        stock.make();
                    } catch (Exception cause) {
                        throw new IllegalStateException(cause);
                    }
                })
                .join();
    }

    @Test
    void anOlderArchiveIsBroughtUpToDate() throws Exception {
        try (SpareDatabase old = SpareDatabase.ofTheBuild();
                SpareDatabase last = SpareDatabase.ofTheBuild()) {
            SchemaVersions before = new SchemaVersions(old.migrations("037"));
            old.migrations("037").migrate();
            JdbcClient.create(old.pool())
                    .sql("insert into site (name, time_zone, version) values ('Larkmoor', 'Europe/London', 0)")
                    .update();
            Path file = written("old.zip", of(old, before), EVERYTHING);
            load(file, last);

            assertThat(new SchemaVersions(last.migrations()).present())
                    .isEqualTo(versions().present());
            assertThat(Contents.of(last.pool()).get("site"))
                    .singleElement()
                    .asString()
                    .contains("Larkmoor");
        }
    }

    @Test
    void anInstallationThatHasBegunTakesNothing() throws Exception {
        Path file = written(EVERYTHING);
        Map<String, List<String>> before = Contents.of(database);

        assertThatThrownBy(() -> takingIn.takeIn(file, Optional.of(new NewPerson("ada", "Ada", "four plain words"))))
                .isInstanceOfSatisfying(
                        ArchiveRefusedException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(ArchiveFault.NOT_EMPTY));
        assertThat(Contents.of(database)).isEqualTo(before);
    }

    @Test
    void whatBreaksInTheMiddleLeavesAnEmptyInstallation() throws Exception {
        try (SpareDatabase last = SpareDatabase.ofTheBuild()) {
            last.migrations().migrate();
            Map<String, List<String>> empty = Contents.of(last.pool());
            Path broken = Tampered.withRowOfNobody(written(EVERYTHING), folder.resolve("broken.zip"));

            assertThatThrownBy(() -> load(broken, last)).isInstanceOf(ArchiveRefusedException.class);
            assertThat(Contents.of(last.pool())).isEqualTo(empty);
        }
    }

    private ArchiveScope lastYear() {
        Instant now = Instant.now();
        return ArchiveScope.Year.of(kept.site(), now.minus(Duration.ofDays(365)), now.plus(Duration.ofDays(1)));
    }

    private Path written(ArchiveScope scope) throws IOException {
        return written("archive.zip", archives, scope);
    }

    private Path written(String name, Archives writer, ArchiveScope scope) throws IOException {
        Path file = folder.resolve(name);
        try (OutputStream to = Files.newOutputStream(file)) {
            writer.write(scope, "a test", to);
        }
        return file;
    }

    private Archives of(SpareDatabase spare) {
        return of(spare, new SchemaVersions(spare.migrations()));
    }

    private Archives of(SpareDatabase spare, SchemaVersions versions) {
        return new Archives(
                spare.pool(),
                new JdbcTransactionManager(spare.pool()),
                versions,
                sites,
                new StaticListableBeanFactory().getBeanProvider(RecordSheet.class),
                Clock.systemUTC());
    }

    @Autowired
    private org.flywaydb.core.Flyway flyway;

    private SchemaVersions versions() {
        return new SchemaVersions(flyway);
    }

    private static void load(Path file, SpareDatabase into) throws IOException {
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            archive.check();
            new Loading(new SchemaVersions(into.migrations()), into.pool()).load(archive, () -> {});
        }
    }

    private List<String> ofSite(DataSource from, String table) throws SQLException {
        String site = "site_id='" + kept.site().id() + "'";
        return Contents.of(from).getOrDefault(table, List.of()).stream()
                .filter(row -> row.contains(site))
                .toList();
    }

    private static long number(JdbcClient rows, String query) {
        return rows.sql(query).query(Long.class).single();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }
}
